import { parseArgs } from 'node:util';

const TEXT = { type: 'string' } as const;
const SEVERAL = { type: 'string', multiple: true } as const;
const SWITCH = { type: 'boolean', default: false } as const;

/** Options of `plan`: those of the plan itself come first. */
const OPTIONS = {
  title: TEXT,
  question: TEXT,
  varies: TEXT,
  control: TEXT,
  treatment: SEVERAL,
  lot: SEVERAL,
  crop: TEXT,
  species: TEXT,
  author: TEXT,
  name: TEXT,
  container: TEXT,
  block: TEXT,
  treated: TEXT,
  germinated: TEXT,
  blind: TEXT,
  days: TEXT,
  day: TEXT,
  matters: TEXT,
  base: TEXT,
  trays: TEXT,
  each: TEXT,
  seeds: TEXT,
  seed: TEXT,
  sown: TEXT,
  from: TEXT,
  key: TEXT,
  content: TEXT,
  help: SWITCH,
} as const;

export interface PlanOptions {
  /** Id of the trial; null where it was not given. */
  readonly trial: string | null;
  readonly values: Readonly<Partial<Record<Exclude<keyof typeof OPTIONS, 'treatment' | 'lot' | 'help'>, string>>> & {
    readonly treatment?: readonly string[];
    readonly lot?: readonly string[];
    readonly help: boolean;
  };
}

/** The command line of `plan`; a text says what is not known of it. */
export function planOptions(args: readonly string[]): PlanOptions | string {
  try {
    const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: OPTIONS });
    const [trial = null, ...others] = positionals;
    return others.length > 0 ? 'Name one trial.' : { trial, values };
  } catch (error) {
    return error instanceof Error ? (error.message.split('. ')[0] ?? error.message) : String(error);
  }
}
