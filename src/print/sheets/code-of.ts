import type { Sowing } from '../../trial/trial.ts';

/** What stands on the container: the blind code, or the sowing's id where there is none. */
export const codeOf = ({ label, id }: Sowing): string => label ?? id;
