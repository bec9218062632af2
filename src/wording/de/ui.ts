import type { UiKey } from '../words.ts';
import { charts } from './ui/charts.ts';
import { format } from './ui/format.ts';
import { kit } from './ui/kit.ts';
import { lists } from './ui/lists.ts';
import { luck } from './ui/luck.ts';
import { pages } from './ui/pages.ts';
import { planAnswer } from './ui/plan-answer.ts';
import { planPage } from './ui/plan-page.ts';
import { planning } from './ui/planning.ts';
import { print } from './ui/print.ts';
import { prose } from './ui/prose.ts';
import { record } from './ui/record.ts';
import { recheck } from './ui/recheck.ts';
import { report } from './ui/report.ts';
import { seedStorage } from './ui/seed-storage.ts';
import { site } from './ui/site.ts';
import { storage } from './ui/storage.ts';
import { tables } from './ui/tables.ts';

/** Every label of page furniture, in German. Braces are filled by `words.say`. */
export const ui: Readonly<Record<UiKey, string>> = {
  ...site,
  ...report,
  ...record,
  ...recheck,
  ...storage,
  ...seedStorage,
  ...tables,
  ...charts,
  ...print,
  ...prose,
  ...luck,
  ...lists,
  ...pages,
  ...kit,
  ...planning,
  ...planAnswer,
  ...format,
  ...planPage,
};
