import type { Sowing } from '../trial.ts';

/**
 * Sowings by what the other tables may call them. A sowing whose row was refused is known by name only, so
 * that its counts are not called unknown.
 */
export class SowingNames {
  readonly #idOf: ReadonlyMap<string, string>;
  readonly #sowings: ReadonlyMap<string, Sowing>;
  readonly #order: ReadonlyMap<string, number>;

  /** @param idOf id of a sowing by its id and by its label */
  constructor(idOf: ReadonlyMap<string, string>, sowings: readonly Sowing[]) {
    this.#idOf = idOf;
    this.#sowings = new Map(sowings.map((sowing) => [sowing.id, sowing]));
    this.#order = new Map([...new Set(idOf.values())].map((id, index) => [id, index]));
  }

  get names(): Iterable<string> {
    return this.#idOf.keys();
  }

  idOf(name: string): string | undefined {
    return this.#idOf.get(name);
  }

  /** Null where its row was refused. */
  sowing(id: string): Sowing | null {
    return this.#sowings.get(id) ?? null;
  }

  /** Place in sowings.csv, for sorting. */
  order(id: string): number {
    return this.#order.get(id) ?? Infinity;
  }
}
