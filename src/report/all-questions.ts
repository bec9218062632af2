import { getEntry } from 'astro:content';
import type { PooledQuestion } from '../files/pooled-questions.ts';

/** Every question that several trials answer; none is no mistake, and a group may ask none. */
export async function allQuestions(): Promise<readonly { readonly id: string; readonly data: PooledQuestion }[]> {
  const { entries } = (await getEntry('questions', 'all'))?.data ?? { entries: [] };
  return entries.map((data) => ({ id: data.question.id, data }));
}
