import { creditRole } from '../credit-role.ts';
import type { Words } from '../words.ts';
import { allMethods } from './all-methods.ts';
import { allNotices } from './all-notices.ts';
import { cannotTell } from './cannot-tell.ts';
import { caveatName } from './caveat-name.ts';
import { caveatWords } from './caveats/caveat-words.ts';
import { claimWords } from './claim-words.ts';
import { comparisonName } from './comparison-name.ts';
import { comparisonSentence } from './comparison-sentence.ts';
import { counted } from './counted.ts';
import { crop } from './crop.ts';
import { date } from './date.ts';
import { difference } from './difference.ts';
import { duration } from './duration.ts';
import { glossary } from './glossary.ts';
import { forms as termForms } from './glossary/forms.ts';
import { groupSentence } from './group-sentence.ts';
import { guarded } from './guarded.ts';
import { headline } from './headline.ts';
import { impression } from './impression.ts';
import { inShort } from './in-short.ts';
import { intervalName } from './interval-name.ts';
import { label } from '../label.ts';
import { leftOut } from './left-out.ts';
import { leftOutReason } from './left-out-reason.ts';
import { list } from './list.ts';
import { lotName } from './lot-name.ts';
import { measureName } from './measure-name.ts';
import { methods } from './methods.ts';
import { moisture } from './moisture.ts';
import { notices } from './notices.ts';
import { number } from './number.ts';
import { outcomeTitle } from './outcome-title.ts';
import { pValue } from './p-value.ts';
import { pooled } from './pooled/pooled.ts';
import { planChangeText } from './plan-change-text.ts';
import { quantity } from './quantity.ts';
import { range } from './range.ts';
import { roleWords } from './role-words.ts';
import { retest } from './retest.ts';
import { say } from './say.ts';
import { size } from './size.ts';
import { storageFindings } from './storage-findings.ts';
import { storageSeries } from './storage-series.ts';
import { testName } from './test-name.ts';
import { trust } from './trust.ts';
import { ui } from './ui.ts';
import { unitWord } from './unit-word.ts';
import { verdictMark } from './verdict-mark.ts';

/** English, British spelling. */
export const words: Words = {
  language: 'en-GB',
  number,
  quantity,
  unitName: (unit) => unit,
  range,
  date,
  list,
  counted,
  difference,
  size,
  pValue,
  duration,
  lotName,
  treatmentLabel: label,
  units: (trial, { unit, units }) => counted(units, unitWord(trial, unit)),
  unitWord: (trial, many = false) => unitWord(trial, 'sowing', many ? 2 : 1),
  outcomeTitle: (_trial, result) => outcomeTitle(result),
  measureName,
  comparisonName,
  crop,
  creditRole: (role) => creditRole(role, roleWords),
  inShort,
  comparisonSentence,
  headline,
  groupSentence,
  leftOut,
  planChanges: ({ plan }) => plan.changes.map(planChangeText),
  verdict: verdictMark,
  caveat: caveatWords,
  caveatName,
  trust,
  cannotTell,
  impression,
  moisture,
  storageSeries,
  retest,
  pooled,
  storageFindings,
  notices,
  allNotices,
  methods,
  allMethods,
  glossary,
  termForms,
  intervalName,
  testName,
  leftOutReason,
  guarded,
  claimWords,
  ui,
  say,
};
