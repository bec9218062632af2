import type { BenchEvent, BenchRecords } from './bench.ts';

export interface AddedRecords {
  /** Own records with those of the file that are new. */
  readonly records: BenchRecords;
  /** The same, but where both have something else for one sowing and day, as the file has it. */
  readonly asInFile: BenchRecords;
  /** Checks and measurements that both have, with something else in them. */
  readonly differing: readonly { readonly sowing: string; readonly day: number }[];
}

/** Brings what a file holds together with what is on the device. Nothing of either is lost without a decision. */
export function addedRecords(own: BenchRecords, file: BenchRecords): AddedRecords {
  const differing = [
    ...Object.entries(file.checks).filter(([key, check]) => differs(own.checks[key], check)),
    ...Object.entries(file.measurements).filter(([key, row]) => differs(own.measurements[key], row)),
  ].map(([, { sowing, day }]) => ({ sowing, day }));
  const columns = new Set(own.traits.map(({ column }) => column));
  const common = {
    traits: [...own.traits, ...file.traits.filter(({ column }) => !columns.has(column))],
    events: withEvents(own.events, Object.values(file.events)),
  };
  const joined = Object.entries(file.measurements).map(([key, row]) => [key, { ...row, values: { ...row.values, ...given(own.measurements[key]?.values) } }] as const); // prettier-ignore
  const replaced = Object.entries(file.measurements).map(([key, row]) => [key, { ...row, values: { ...own.measurements[key]?.values, ...given(row.values) } }] as const); // prettier-ignore
  return {
    records: {
      ...common,
      checks: { ...file.checks, ...own.checks },
      measurements: { ...own.measurements, ...Object.fromEntries(joined) },
    },
    asInFile: {
      ...common,
      checks: { ...own.checks, ...file.checks },
      measurements: { ...own.measurements, ...Object.fromEntries(replaced) },
    },
    differing,
  };
}

type Values = Readonly<Record<string, number | null>>;

const given = (values: Values = {}): Values =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== null));

/** Whether one says something else than the other; what only one of them says is no difference. */
function differs<Kind extends object>(own: Kind | undefined, file: Kind): boolean {
  if (own === undefined) return false;
  if ('values' in own && 'values' in file) {
    const [mine, other] = [given(own.values as Values), given(file.values as Values)];
    return Object.keys(other).some((column) => column in mine && mine[column] !== other[column]);
  }
  return Object.keys(own).some((key) => own[key as keyof Kind] !== file[key as keyof Kind]);
}

function withEvents(own: BenchRecords['events'], added: readonly BenchEvent[]): BenchRecords['events'] {
  const said = new Set(Object.values(own).map(sameEvent));
  let next = Math.max(0, ...Object.keys(own).map(Number));
  const fresh = added.filter((event) => !said.has(sameEvent(event))).map((event) => [String(++next), event] as const);
  return { ...own, ...Object.fromEntries(fresh) };
}

const sameEvent = ({ day, date, sowing, what, action }: BenchEvent): string =>
  JSON.stringify([day, date, sowing, what, action]);
