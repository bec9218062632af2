import { defineMiddleware } from 'astro:middleware';
import { buildKeeper, isBuilding } from './files/kept/build-keeper.ts';
import { madeFrom } from './report/made-from.ts';

/** What is made of one trial and kept for the next build, by route: as what it is kept, and its content type. */
const KEPT: Readonly<Record<string, readonly [kind: string, type: string]>> = {
  '/trials/[trial]': ['report', 'text/html; charset=utf-8'],
  '/trials/[trial]/recheck': ['recheck', 'text/html; charset=utf-8'],
  '/trials/[trial]/summary.pdf': ['summary', 'application/pdf'],
  '/trials/[trial]/preview.png': ['preview', 'image/png'],
};

/** Pages and files of a trial as an earlier build made them from the same things, or made now. */
export const onRequest = defineMiddleware(async ({ routePattern, params, url }, next) => {
  const [kind, type] = KEPT[routePattern] ?? [];
  if (!isBuilding() || kind === undefined || type === undefined) return next();
  const inputs = await madeFrom(params.trial ?? '', url.href, kind === 'report');
  const body = await buildKeeper().bytes(kind, inputs, async () => (await next()).bytes());
  return new Response(body as Uint8Array<ArrayBuffer>, { headers: { 'content-type': type } });
});
