import type { Source } from './words.ts';

const read = (text: string, url: string | null = null): Source => ({ text, url, read: true });
const memory = (text: string, url: string | null = null): Source => ({ text, url, read: false });

/**
 * Published sources, cited in their own language. `read`: a copy was read while this was written; else
 * the citation is from memory and is marked so wherever it is shown.
 */
export const SOURCES = {
  // — what can hurt —
  fdaSprouts: read('US Food and Drug Administration 1999, guidance on sprouted seeds'),
  cfr112: read('21 CFR 112.144, testing of spent sprout irrigation water'),
  nacmcf: memory('US FDA and NACMCF, evaluations of sprouted seeds'),
  cfr201Treated: read('7 CFR 201.31a (2015 edition), labelling of treated seed'),
  cfr2Treated: read('21 CFR 2.25, grain seed treated with poisonous substances'),
  cfr201Mould: read('7 CFR 201.56(c) (2015 edition), infected seedlings and dead seeds'),
  cfr201Acid: read('7 CFR 201.58(b)(7) (2015 edition), acid scarification in laboratories'),
  cfr201Open: read('7 CFR 201.29 and 201.31 (2015 edition), germination standards and labels of vegetable seed'),
  hygHotWater: read(
    'Ohio State University Extension, Ohioline HYG-5818, and Western Australian advice on hot-water treatment',
  ),
  badBugBook: read('US Food and Drug Administration, Bad Bug Book, phytohaemagglutinin (read as quoted by others)'),
  gardening: read('Gardening sites on seedlings that are not to be eaten; weak sources'),
  handbook506: read('USDA Agriculture Handbook 506, table 15 (sealed and open storage of seed)'),
  cpc: read('Center for Plant Conservation, guidance on seed storage; university extension pages (several copies)'),
  ufIfas: read('University of Florida IFAS, pawpaw seed and glossary of seed storage'),
  ellis1990: memory(
    'Ellis, Hong & Roberts 1990; Hong & Ellis 1996, kinds between those that bear drying and those that do not',
  ),
  eu2016: read('Regulation (EU) 2016/2031, notices for travellers and traders since 14 December 2019'),
  smallLots: read('7 CFR 319.37-4 (2015 edition; since renumbered) and the US permit for small lots of seed'),
  cfr361: memory('7 CFR 361 and the lists of the states, noxious weed seeds'),
  eu2002: memory('Directive 2002/55/EC, marketing of vegetable seed'),
  reach: memory('European Chemicals Agency, cobalt(II) chloride as a substance of very high concern'),

  // — seed trade —
  cfr201Tolerance: read('7 CFR 201.55 (2015 edition), greatest range between replicates'),
  miles: memory('Miles 1963, Handbook of tolerances and of measures of precision for seed testing'),
  fao2014: read('FAO 2014, Genebank Standards, 4.2.1 and 4.2.2 (as quoted in a course of the Crop Trust)'),
  cfr201Sealed: read('7 CFR 201.36c (2015 edition), moisture of sealed seed'),
  hart: read('Hart, Feinstein & Golumbic 1959, USDA Marketing Research Report 304 (abstract)'),
  ista: memory('International Rules for Seed Testing, chapters 5 and 9'),

  // — statistics —
  hurlbert: memory('Hurlbert 1984, Ecological Monographs 54, 187–211'),
  wilson: memory('Wilson 1927, Journal of the American Statistical Association 22, 209–212'),
  newcombeA: memory('Newcombe 1998a, Statistics in Medicine 17, 857–872, method 3'),
  newcombeB: memory('Newcombe 1998b, Statistics in Medicine 17, 873–890, method 10'),
  rao: memory('Rao & Scott 1992, Biometrics 48, 577–585'),
  smyth: memory('Smyth 2004, Statistical Applications in Genetics and Molecular Biology 3, article 3'),
  kish: memory('Kish 1965, Survey Sampling'),
  williams: memory('Williams 1982, Applied Statistics 31, 144–148'),
  skellam: memory('Skellam 1948, Journal of the Royal Statistical Society B 10, 257–261'),
  phipson: memory('Phipson & Smyth 2010, Statistical Applications in Genetics and Molecular Biology 9, article 39'),
  holm: memory('Holm 1979, Scandinavian Journal of Statistics 6, 65–70'),
  farooq: memory('Farooq et al. 2005, Journal of Integrative Plant Biology 47, 187–193'),
  coolbear: memory('Coolbear, Francis & Grierson 1984, Journal of Experimental Botany 35, 1609–1617'),
  kotowski: memory('Kotowski 1926, Proceedings of the American Society for Horticultural Science 23, 176–184'),
  maguire: memory('Maguire 1962, Crop Science 2, 176–177'),
  ranal: read('Ranal & Santana 2006, Brazilian Journal of Botany 29, 1–11 (abstract)'),
  fieller: memory('Fieller 1954, Journal of the Royal Statistical Society B 16, 175–185'),
  welch: memory('Welch 1947, Biometrika 34, 28–35'),
  hedges: memory('Hedges 1981, Journal of Educational Statistics 6, 107–128'),
  hodges: memory('Hodges & Lehmann 1963, Annals of Mathematical Statistics 34, 598–611'),
  schuirmann: memory('Schuirmann 1987, Journal of Pharmacokinetics and Biopharmaceutics 15, 657–680'),
  finney: memory('Finney 1971, Probit Analysis'),
  ellisRoberts: memory('Ellis & Roberts 1980, Annals of Botany 45, 13–30 and 31–37'),
  ellisRoberts1981: memory('Ellis & Roberts 1981, Seed Science and Technology 9, 373–409'),
  ellis1982: memory('Ellis, Osei-Bonsu & Roberts 1982, Annals of Botany 50, 69–82'),
  kraakVos: memory('Kraak & Vos 1987, Annals of Botany 59, 343–349'),
  harrington: memory('Harrington 1972, in Kozlowski (ed.), Seed Biology III, 145–245 (doubling rules)'),
  ellisHong: read('Ellis & Hong 2007, Seed Science and Technology 35, 432–444 (abstract)'),
  solberg: read('Solberg et al. 2020, Frontiers in Plant Science 11, 1007 (abstract)'),
  knapp: memory('Knapp & Hartung 2003, Statistics in Medicine 22, 2693–2710'),
  viechtbauer: memory('Viechtbauer 2005, Journal of Educational and Behavioral Statistics 30, 261–293'),
  spiegelhalter: memory(
    'Higgins, Thompson & Spiegelhalter 2009, Journal of the Royal Statistical Society A 172, 137–159',
  ),
  higgins: memory('Higgins & Thompson 2002, Statistics in Medicine 21, 1539–1558'),
} as const satisfies Record<string, Source>;
