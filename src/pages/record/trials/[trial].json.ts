import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { benchTrial } from '../../../archive/bench/bench-trial.ts';
import { inBenchOrder } from '../../../print/sheets/in-bench-order.ts';

export const getStaticPaths = (async () =>
  (await getCollection('trials')).flatMap(({ id, data: { trial } }) => {
    const bench = benchTrial(trial, inBenchOrder);
    return bench === null ? [] : [{ params: { trial: id }, props: { bench } }];
  })) satisfies GetStaticPaths;

/** A planned or growing trial as the page for the bench opens it: without treatments. */
export const GET: APIRoute = ({ props }) =>
  new Response(`${JSON.stringify(props.bench)}\n`, { headers: { 'content-type': 'application/json' } });
