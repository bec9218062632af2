/** What the guard needs to know of a node of the tree that the compiler of Markdown and MDX works on (mdast, MDX). */
export interface ProseNode {
  readonly type: string;
  children?: readonly ProseNode[];
  readonly position?: { readonly start: { readonly line: number; readonly column: number; readonly offset?: number } };
  readonly url?: string;
  /** Of definitions and what refers to them. */
  readonly identifier?: string;
  readonly value?: string;
  readonly name?: string | null;
  readonly depth?: number;
  readonly attributes?: readonly ProseAttribute[];
  data?: { estree?: Estree | null; hProperties?: Record<string, unknown> };
}

export interface ProseAttribute {
  readonly type: 'mdxJsxAttribute' | 'mdxJsxExpressionAttribute';
  readonly name?: string;
  readonly value?: string | null | { readonly value: string; readonly data?: { readonly estree?: Estree | null } };
  readonly position?: ProseNode['position'];
}

/** JavaScript as it was parsed (ESTree); a literal is one expression statement that holds a Literal. */
export interface Estree {
  readonly body: readonly { readonly type: string; readonly expression?: EstreeExpression }[];
}
export interface EstreeExpression {
  readonly type: string;
  readonly operator?: string;
  readonly argument?: EstreeExpression;
  readonly value?: unknown;
}

/** The node and all below it, in the order of the text. */
export function* walk(node: ProseNode): Generator<ProseNode> {
  yield node;
  for (const child of node.children ?? []) yield* walk(child);
}
