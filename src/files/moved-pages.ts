/**
 * Notes which pages are old addresses, so that lists of pages leave them out: pages whose canonical address is another than
 * their own.
 */
export function movedPages(): { note(address: string, html: string): void; has(address: string): boolean } {
  const moved = new Set<string>();
  const own = (address: string): string => new URL(address).pathname;
  return {
    has: (address) => moved.has(own(address)),
    note: (address, html) => {
      const canonical = /<link rel="canonical" href="([^"]*)"/.exec(html)?.[1];
      if (canonical !== undefined && own(canonical) !== own(address)) moved.add(own(address));
    },
  };
}
