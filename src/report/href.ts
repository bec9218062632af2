/** Address of a page or file of this site, `/trials/` say, wherever the site is published (`https://example.org/garden/`). */
export function href(path: string): string {
  return import.meta.env.BASE_URL.replace(/\/$/, '') + path;
}
