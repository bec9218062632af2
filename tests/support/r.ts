import { WebR } from 'webr';

let started: Promise<WebR> | undefined;

/** R itself (base and stats), in this process; started once a test file, in about a second. */
export function startR(): Promise<WebR> {
  started ??= (async () => {
    const webR = new WebR({ interactive: false });
    await webR.init();
    return webR;
  })();
  return started;
}

/** Evaluates R code whose value is a numeric vector. */
export async function r(code: string): Promise<number[]> {
  const webR = await startR();
  return (await webR.evalRRaw(code, 'number[]')) as number[];
}
