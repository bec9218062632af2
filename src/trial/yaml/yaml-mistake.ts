import type { Refusal } from '../refusal.ts';

const COLON =
  'Put the whole text into double quotes where it holds a colon and a blank, and begin every key of one list at the same column.';

/** Mistakes of YAML that people make, by the parser's own code: what is wrong and how to mend it. */
const MISTAKES: Readonly<Record<string, readonly [message: string, remedy: string]>> = {
  TAB_AS_INDENT: ['a tab stands at the beginning of the line', 'Indent with blanks, not with tabs.'],
  BLOCK_AS_IMPLICIT_KEY: ['a second "key:" stands inside a value, or the line is indented too far', COLON],
  MULTILINE_IMPLICIT_KEY: [
    'a line without "key: value", or a key that runs over two lines',
    'Put a blank behind the colon (title: Leek), and check how far the lines are indented.',
  ],
  MISSING_CHAR: [
    'a quotation mark or bracket opens here and is not closed',
    'Close it; a text with such a sign in it goes into quotes of the other kind.',
  ],
  BAD_INDENT: [
    'a bracket opens here and is not closed, or the line is indented too little',
    'Close the bracket, or indent the line.',
  ],
  BAD_SCALAR_START: [
    'a value begins with a sign that YAML keeps for itself',
    'Put the whole value into double quotes.',
  ],
  BAD_DQ_ESCAPE: ['a backslash stands inside double quotes', 'Write it twice, or use single quotes.'],
  MULTIPLE_DOCS: [
    'a line of three hyphens begins a second document',
    'Take the line out; one file holds one document.',
  ],
  UNEXPECTED_TOKEN: [
    'something stands here that does not fit the lines before it',
    "Check indentation, quotation marks and brackets; put a text with ' or : into double quotes.",
  ],
  TAG_RESOLVE_FAILED: ['a tag beginning with "!" stands here', 'Put the value into double quotes.'],
};

/** A mistake found by the YAML parser, in a grower's words. */
export function yamlMistake(code: string, message: string): Refusal {
  const [known, remedy] = MISTAKES[code] ?? [
    `this cannot be read as YAML (${message.toLowerCase().replace(/\.$/, '')})`,
    'Compare with the example in the description of the data format.',
  ];
  return { rule: 'yaml', message: known, remedy };
}
