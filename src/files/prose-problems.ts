import type { Problem } from '../trial/problem.ts';
import { invisibleSign } from '../trial/text/invisible-sign.ts';
import { didYouMean } from '../trial/text/did-you-mean.ts';
import { isComment } from './prose/is-comment.ts';
import { walk, type Estree, type ProseAttribute, type ProseNode } from './prose-node.ts';

/** What an author's text may use, without importing it. */
const COMPONENTS = ['InShort', 'Result', 'Chart', 'Table', 'Num', 'Claim', 'Photos', 'Methods', 'Caveats'];
const TAGS =
  'a abbr b br cite dd del details dfn div dl dt em figcaption figure hr i ins kbd li mark ol p q s small span strong sub summary sup time u ul var';
const PLAIN_TAGS = new Set(TAGS.split(' '));
const PLAIN_ATTRIBUTES = new Set(['cite', 'datetime', 'dir', 'href', 'lang', 'open', 'title']);

/**
 * Everything in an author's text that is code in place of words: imports, exports, JavaScript other than
 * plain values, raw HTML that could run or load something, addresses that are neither web nor mail.
 * Works on the very tree that is compiled, so that nothing slips between two readings.
 *
 * @param file path as the author knows it
 */
export function proseProblems(tree: ProseNode, file: string): Problem[] {
  const nodes = [...walk(tree)];
  // A picture's address can stand elsewhere: ![x][1], and far below [1]: https://…
  const pictured = new Set(nodes.filter(({ type }) => type === 'imageReference').map(({ identifier }) => identifier));
  return nodes.flatMap((node) => {
    const isPicture = node.type === 'definition' && pictured.has(node.identifier);
    const found = isPicture && !isOwnPicture(node.url) ? [picture(node.url)] : problemsOf(node);
    return found.map((one) => ({ ...placed(node, file), ...one }));
  });
}

type Found = Pick<Problem, 'rule' | 'message' | 'remedy'>;

function problemsOf(node: ProseNode): readonly Found[] {
  switch (node.type) {
    case 'mdxjsEsm':
      return [
        refused(
          'prose-import',
          'found an import or export; a report is text, not a program',
          'Take the line out: components need no import.',
        ),
      ];
    case 'mdxFlowExpression':
    case 'mdxTextExpression':
      return isPlain(node.data?.estree) ? [] : [expression(node.value)];
    case 'mdxJsxFlowElement':
    case 'mdxJsxTextElement':
      return elementProblems(node);
    case 'html':
      return isComment(node)
        ? []
        : [
            refused(
              'prose-html',
              `found raw HTML: ${short(node.value)}`,
              'Write it in Markdown, or rename the file to report.mdx and use a component.',
            ),
          ];
    case 'link':
    case 'definition':
      return isSafeAddress(node.url) ? [] : [address(node.url)];
    case 'text': {
      // Written as a character reference, such as &#8238;
      const sign = invisibleSign(node.value ?? '');
      return sign ? [sign.refusal] : [];
    }
    case 'image':
      return isOwnPicture(node.url) ? [] : [picture(node.url)];
    default:
      return [];
  }
}

function elementProblems({ name, attributes = [] }: ProseNode): readonly Found[] {
  const isComponent = /^[A-Z]/.test(name ?? '');
  if (isComponent && !COMPONENTS.includes(name ?? '')) {
    return [
      refused(
        'prose-component',
        `found <${name}>, which is no component`,
        didYouMean(name ?? '', COMPONENTS, 'component'),
      ),
    ];
  }
  if (name && !isComponent && !PLAIN_TAGS.has(name)) {
    return [
      refused(
        'prose-html',
        `found <${name}>, which a report may not hold`,
        'Write it in Markdown, or use a component.',
      ),
    ];
  }
  return attributes.flatMap((attribute) => attributeProblems(attribute, isComponent));
}

function attributeProblems({ type, name = '', value }: ProseAttribute, ofComponent: boolean): readonly Found[] {
  if (type === 'mdxJsxExpressionAttribute') return [expression('{…}')];
  const given = typeof value === 'object' && value !== null ? value : null;
  if (given && !isPlain(given.data?.estree)) return [expression(given.value)];
  if (ofComponent ? /[:]/.test(name) : !PLAIN_ATTRIBUTES.has(name)) {
    return [refused('prose-attribute', `found the attribute ${name}, which a report may not set`, 'Take it out.')];
  }
  if ((name === 'href' || name === 'cite') && !(typeof value === 'string' && isSafeAddress(value)))
    return [address(given?.value ?? String(value))];
  return [];
}

const refused = (rule: string, message: string, remedy: string): Found => ({ rule, message, remedy });
const expression = (code: string | undefined) =>
  refused(
    'prose-expression',
    `found the expression {${short(code)}}; only plain values may stand in braces, such as {14} or {"jar"}`,
    'Write the words or the number itself.',
  );
const address = (url: string | undefined) =>
  refused('prose-address', `found a link to ${short(url)}`, 'Links begin with https://, http://, mailto:, / or #.');

const picture = (url: string | undefined) =>
  refused(
    'prose-image',
    `found a picture at ${short(url)}; only pictures of this trial are shown, nothing is loaded from elsewhere`,
    'Put the picture into photos/ beside the report and write ![what it shows](photos/name.jpg).',
  );

/** A comment, a number, a text, true, false: nothing that is worked out. */
function isPlain(estree: Estree | null | undefined): boolean {
  if (!estree) return true;
  return estree.body.every(({ type, expression }) => {
    const inner =
      expression?.type === 'UnaryExpression' && expression.operator === '-' ? expression.argument : expression;
    return type === 'ExpressionStatement' && inner?.type === 'Literal' && PLAIN_VALUES.includes(typeof inner.value);
  });
}

const PLAIN_VALUES = ['string', 'number', 'boolean'];

const isSafeAddress = (url = '') =>
  /^(https?:\/\/|mailto:|#|\/(?![/\\])|\.{1,2}\/|[\w-]+(\/|\.html$|$))/i.test(url.trim());
const isOwnPicture = (url = '') => /^(\.\/)?photos\/[^/\\:%?#]+\.(jpe?g|png|webp)$/i.test(url);
const short = (text = '') => JSON.stringify(text.length > 60 ? `${text.slice(0, 60)}…` : text);

function placed(
  { position }: ProseNode,
  file: string,
): Pick<Problem, 'file' | 'line' | 'column' | 'cell' | 'field' | 'level'> {
  const { line = null, column = null } = position?.start ?? {};
  return { file, line, column, cell: null, field: null, level: 'error' };
}
