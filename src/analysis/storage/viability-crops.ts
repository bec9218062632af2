import type { ViabilityConstants } from '../../statistics/storage/viability-period.ts';

/** A crop with published constants of the viability equation. */
export interface ViabilityCrop extends ViabilityConstants {
  readonly id: CropId;
  readonly species: string;
  readonly source: CropSource;
  /** Percent wet basis. */
  readonly moisture: Span;
  /** °C. */
  readonly temperature: Span;
}

export type CropId =
  | 'barley' | 'onion' | 'soybean' | 'chickpea' | 'cowpea' | 'lettuce' | 'maize' | 'sorghum' | 'pearl-millet'
  | 'sugar-beet' | 'african-rice' | 'wheat' | 'foxtail-millet' | 'sugarcane' | 'finger-millet' | 'kodo-millet'
  | 'rice' | 'potato'; // prettier-ignore
export type CropSource =
  'ellis-roberts-1980b' | 'ellis-roberts-1981' | 'ellis-1982' | 'kraak-vos-1987' | 'ellis-hong-2007';

export interface Span {
  readonly least: number;
  readonly most: number;
}

/**
 * Where the equation is used here. Ellis & Hong (2007) state 2 to 25 % and 0 to 50 °C over twelve crops; for the others no
 * range could be read. Drying helps only down to a limit of 2 to 6 % that differs by kind, and above about 15 % seed
 * may breathe and mould, so nothing is said below 5 % or, for constants from memory, above 15 %.
 */
const READ = { moisture: { least: 5, most: 25 }, temperature: { least: 0, most: 50 } };
const REMEMBERED = { moisture: { least: 5, most: 15 }, temperature: { least: 0, most: 50 } };
const COMMON = { ch: 0.0322, cq: 0.000454, source: 'ellis-hong-2007', ...READ } as const;

/**
 * Published constants, sources.md 3.2. Those of Ellis & Hong were read in the abstract; the others are from memory. The
 * standard errors of K_E and C_W that Ellis & Hong give are strongly correlated and do not make a range for σ.
 */
export const VIABILITY_CROPS: readonly ViabilityCrop[] = [
  { id: 'barley', species: 'Hordeum vulgare', ke: 9.983, cw: 5.896, ch: 0.04, cq: 0.000428, source: 'ellis-roberts-1980b', ...REMEMBERED },
  { id: 'onion', species: 'Allium cepa', ke: 6.975, cw: 3.47, ch: 0.04, cq: 0.000428, source: 'ellis-roberts-1981', ...REMEMBERED },
  { id: 'soybean', species: 'Glycine max', ke: 7.748, cw: 3.979, ch: 0.053, cq: 0.000228, source: 'ellis-1982', ...REMEMBERED },
  { id: 'chickpea', species: 'Cicer arietinum', ke: 9.07, cw: 4.82, ch: 0.045, cq: 0.000324, source: 'ellis-1982', ...REMEMBERED },
  { id: 'cowpea', species: 'Vigna unguiculata', ke: 8.69, cw: 4.715, ch: 0.026, cq: 0.000498, source: 'ellis-1982', ...REMEMBERED },
  { id: 'lettuce', species: 'Lactuca sativa', ke: 8.218, cw: 4.797, ch: 0.0489, cq: 0.000365, source: 'kraak-vos-1987', ...REMEMBERED },
  { id: 'maize', species: 'Zea mays', ke: 9.993, cw: 5.993, ...COMMON },
  { id: 'sorghum', species: 'Sorghum bicolor', ke: 9.381, cw: 5.379, ...COMMON },
  { id: 'pearl-millet', species: 'Pennisetum glaucum', ke: 9.336, cw: 5.54, ...COMMON },
  { id: 'sugar-beet', species: 'Beta vulgaris', ke: 8.988, cw: 4.969, ...COMMON },
  { id: 'african-rice', species: 'Oryza glaberrima', ke: 8.786, cw: 4.727, ...COMMON },
  { id: 'wheat', species: 'Triticum aestivum', ke: 8.498, cw: 4.836, ...COMMON },
  { id: 'foxtail-millet', species: 'Setaria italica', ke: 8.478, cw: 4.829, ...COMMON },
  { id: 'sugarcane', species: 'Saccharum', ke: 8.454, cw: 4.964, ...COMMON },
  { id: 'finger-millet', species: 'Eleusine coracana', ke: 8.288, cw: 4.345, ...COMMON },
  { id: 'kodo-millet', species: 'Paspalum scrobiculatum', ke: 8.138, cw: 4.435, ...COMMON },
  { id: 'rice', species: 'Oryza sativa', ke: 8.096, cw: 4.246, ...COMMON },
  { id: 'potato', species: 'Solanum tuberosum', ke: 8.037, cw: 5.152, ...COMMON },
]; // prettier-ignore
