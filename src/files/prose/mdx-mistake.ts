import type { Problem } from '../../trial/problem.ts';

/** What the parser of MDX tells of a mistake (VFileMessage of vfile-message). */
interface ParserMessage {
  readonly line?: number;
  readonly column?: number;
  readonly reason?: string;
  readonly ruleId?: string;
}

/** Why a text cannot be read as MDX, in words for its author. */
export function mdxMistake(error: unknown): Pick<Problem, 'line' | 'column' | 'rule' | 'message' | 'remedy'> {
  const { reason = String(error), ruleId = '', ...place } = error as ParserMessage;
  const [message, remedy] = explained(ruleId, reason);
  const [, opened = null, at = null] = /\((\d+):(\d+)/.exec(reason) ?? []; // of a component that nothing closes
  const { line = opened && Number(opened), column = at && Number(at) } = place;
  return { line: line || null, column: column || null, rule: 'prose-syntax', message, remedy };
}

function explained(ruleId: string, reason: string): readonly [message: string, remedy: string] {
  if (reason.startsWith('Unexpected character `!` (U+0021) before name')) {
    return ['found <!, which begins a comment in HTML but not here', 'Write the comment as {/* … */}.'];
  }
  if (ruleId === 'acorn') {
    return [
      'found braces, or a line that begins with import or export, that hold no plain value',
      'Write \\{ for a brace that is to be read, and begin the line with another word.',
    ];
  }
  if (/closing (slash|tag)|end-tag|unexpected-lazy|Expected a closing/.test(`${ruleId} ${reason}`)) {
    return [
      `a component or element is not closed, or is closed in another place than it was opened: ${plain(reason)}`,
      'Close it, as in <Result/> or <Claim …>…</Claim>, in the paragraph in which it was opened.',
    ];
  }
  if (/before name|in name|before attribute|in attribute|after attribute/.test(reason)) {
    return [
      `found a < that begins no component: ${plain(reason)}`,
      'Write "less than", or &lt;, where the sign < is meant; put values of attributes into quotes.',
    ];
  }
  if (/expression/.test(reason)) {
    return ['found a { that is never closed', 'Close it, or write \\{ for a brace that is to be read.'];
  }
  return [`this cannot be read: ${plain(reason)}`, 'Write it in plain Markdown.'];
}

const plain = (reason: string) => reason.replace(/\s+/g, ' ').replace(/ \(note: .*\)$/, '');
