import { relative } from 'node:path';
import { DataError } from '../trial/data-error.ts';
import type { ProseNode } from './prose-node.ts';
import { proseProblems } from './prose-problems.ts';

/**
 * Remark plugin: stops the build where an author's text holds code.
 *
 * @throws {DataError} listing everything that was found, with line and column
 */
export function proseGuard() {
  return (tree: ProseNode, { path }: { readonly path?: string }): void => {
    const problems = proseProblems(tree, path ? relative(process.cwd(), path).replaceAll('\\', '/') : 'report.mdx');
    const [first] = problems;
    if (first) throw Object.assign(new DataError(problems), { line: first.line, column: first.column });
  };
}
