import { evaluate, type EvaluateOptions } from '@mdx-js/mdx';

type Props = Readonly<Record<string, unknown>>;

/** An author's text as HTML, made with one of our plugins; its ending chooses between Markdown and MDX. */
export async function proseHtml(
  text: string,
  plugin: NonNullable<EvaluateOptions['remarkPlugins']>[number],
  path = 'report.md',
): Promise<string> {
  const element = (type: unknown, { children, ...attributes }: Props): string => {
    const inner = [children ?? ''].flat().join('');
    const written = Object.entries(attributes).map(([name, value]) => ` ${name}="${String(value)}"`);
    return typeof type === 'string' ? `<${type}${written.join('')}>${inner}</${type}>` : inner;
  };
  const options = { Fragment: Symbol('none'), jsx: element, jsxs: element, remarkPlugins: [plugin] };
  const { default: content } = await evaluate({ path, value: text }, options as unknown as EvaluateOptions);
  return content({}) as unknown as string;
}
