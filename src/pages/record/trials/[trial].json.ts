import type { APIRoute, GetStaticPaths } from 'astro';
import { allTrials } from '../../../report/all-trials.ts';
import { benchTrial } from '../../../archive/bench/bench-trial.ts';
import { inBenchOrder } from '../../../print/sheets/in-bench-order.ts';

export const getStaticPaths = (async () =>
  (await allTrials()).flatMap(({ trial }) => {
    const bench = benchTrial(trial, inBenchOrder);
    return bench === null ? [] : [{ params: { trial: trial.id }, props: { bench } }];
  })) satisfies GetStaticPaths;

/** A planned or growing trial as the page for the bench opens it: without treatments. */
export const GET: APIRoute = ({ props }) =>
  new Response(`${JSON.stringify(props.bench)}\n`, { headers: { 'content-type': 'application/json' } });
