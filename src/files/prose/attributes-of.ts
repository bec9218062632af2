import type { ProseAttribute, ProseNode } from '../prose-node.ts';

/** The attributes of a component by name: text, a number, true, false; what is no plain value is undefined. */
export function attributesOf({
  attributes = [],
}: ProseNode): ReadonlyMap<string, string | number | boolean | undefined> {
  return new Map(attributes.map((attribute) => [attribute.name ?? '…', valueOf(attribute)]));
}

function valueOf({ value }: ProseAttribute): string | number | boolean | undefined {
  if (value === null || value === undefined) return true;
  if (typeof value === 'string') return value;
  const expression = value.data?.estree?.body[0]?.expression;
  const isNegative = expression?.type === 'UnaryExpression';
  const literal = isNegative ? expression.argument?.value : expression?.value;
  if (typeof literal === 'number') return isNegative ? -literal : literal;
  return typeof literal === 'string' || typeof literal === 'boolean' ? literal : undefined;
}
