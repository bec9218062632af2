// What the threads of page-threads.ts run.
import { move, transferableSymbol, valueSymbol, workerData } from 'piscina';
import type { AstroIntegration, RouteData } from 'astro';

type Pages = Parameters<NonNullable<AstroIntegration['hooks']['astro:build:setup']>>[0]['pages'];

/** What a thread is started with. */
export interface PageThreadData {
  /** The file with which Astro's bundle of all pages begins. */
  readonly entry: string;
  /** Style sheets of each page, by Astro's name for it. */
  readonly pages: ReadonlyMap<string, Pick<Pages extends Map<string, infer Page> ? Page : never, 'styles'>>;
}

export interface PageOrder {
  readonly url: string;
  readonly route: string;
  readonly component: string;
}

/** A response as it can be sent; what went wrong, with all that was known of it. */
export type SentPage =
  | { readonly status: number; readonly headers: [string, string][]; readonly body: Uint8Array<ArrayBuffer> }
  | { readonly failed: Readonly<Record<string, unknown>> };

/** As much as is needed here of what the bundle of pages gives. */
interface App {
  readonly manifest: { readonly routes: readonly { readonly routeData: RouteData }[] };
  setInternals(internals: { readonly pagesByKeys: PageThreadData['pages'] }): void;
  setOptions(options: object): void;
  render(request: Request, options: { readonly routeData: RouteData }): Promise<Response>;
}

const { entry, pages }: PageThreadData = workerData;
const { app }: { app: App } = await import(entry);
app.setInternals({ pagesByKeys: pages });
const destination = { write: ({ message }: { message: string }) => void process.stderr.write(`${message}\n`) };
app.setOptions({ settings: { scripts: [] }, logger: { options: { destination } } });

/** The page or file of an address. */
export default async function page({ url, route, component }: PageOrder): Promise<SentPage | ReturnType<typeof move>> {
  const found = app.manifest.routes.find(
    (one) => one.routeData.route === route && one.routeData.component === component,
  );
  try {
    if (!found) throw new Error(`${component} is missing in what Astro bundled`);
    const response = await app.render(new Request(url), { routeData: found.routeData });
    const { status, headers } = response;
    const body = await response.bytes();
    const sent: SentPage = { status, headers: [...headers], body };
    return move({ [transferableSymbol]: body.buffer, [valueSymbol]: sent }); // what is long goes without a copy
  } catch (error) {
    const { name, message, stack } = error as Error;
    return { failed: { ...(error as Error), name, message, stack } };
  }
}
