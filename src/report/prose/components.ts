import Caveats from '../Caveats.astro';
import InShort from '../InShort.astro';
import Methods from './Methods.astro';
import Chart from './Chart.astro';
import Claim from './Claim.astro';
import Num from './Num.astro';
import Photos from './Photos.astro';
import Result from './Result.astro';
import Table from './Table.astro';

/** What an author's text may use without importing it; the guard (src/files/prose-problems.ts) knows the same names. */
export const components = { InShort, Result, Chart, Table, Num, Claim, Photos, Methods, Caveats };
