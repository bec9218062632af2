import type { Trial, Treatment, Varies } from '../../trial/trial.ts';
import type { Evidence } from './evidence.ts';

type Change = Evidence['two-changes']['changes'][number];

/** What each recorded key stands for among the things that a question may vary. */
const RECORDS: Readonly<Record<'soak' | 'temperature' | 'moisture', readonly Varies[]>> = {
  soak: ['soak'],
  temperature: ['temperature', 'storage'],
  moisture: ['drying', 'storage'],
};

/** What a treatment and the control differ in: what the question varies, and every recorded thing that differs besides. */
export function changesBetween(
  { varies }: Pick<Trial, 'varies'>,
  treatment: Treatment,
  control: Treatment,
): readonly Change[] {
  const recorded = [
    { what: 'soak' as const, treatment: treatment.soakHours, control: control.soakHours },
    { what: 'temperature' as const, treatment: treatment.temperature, control: control.temperature },
    { what: 'moisture' as const, treatment: treatment.moisture, control: control.moisture },
  ]
    .filter((change) => change.what !== 'soak' || varies === 'soak')
    .filter((change) => change.treatment !== null && change.control !== null && change.treatment !== change.control);
  if (varies === null || recorded.some(({ what }) => RECORDS[what].includes(varies))) return recorded;
  return [...recorded, { what: 'varies', treatment: varies, control: null }];
}
