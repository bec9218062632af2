/** Words that English sentences of ours are made of and that German does not have. */
const ENGLISH = new Set(
  `the of and to for with without that this those these is are were been being be has have had having by from not but or
  on at it its as which when where who whose what why how there here than then they their them could would should can
  cannot may might must only each every both either neither one two three four five more most less fewer same other
  another between before after during day days week weeks month months year years seed seeds seedling seedlings tray
  trays dish dishes pot pots jar jars row rows sheet came come up down out off over under above below about into onto
  because whether if nobody nothing something anything everything everyone differ differs differed different difference
  differences larger smaller higher lower earlier later taller shorter longer heavier lighter known recorded measured
  counted sown placed told said shown given taken made found set kept left right mean means range ranges sowing lot lots
  treatment control unit units count counts check checks trial trials grower growers finding findings
  result results method methods people question questions source sources words page pages file files
  chance luck likely probably alike cause unclear smallest largest matter matters beforehand afterwards again also
  always never often once yes no none we our you your i he she do does did done will`
    .split(/\s+/)
    .filter((word) => /^[a-z]+$/.test(word)),
);

/** German has these as well, or they are names, symbols and file names. */
const SHARED = ['in', 'an', 'was', 'so', 'will', 'man', 'die', 'am', 'bei', 'all', 'log', 'set', 'mean', 'i', 'also'];
for (const word of SHARED) ENGLISH.delete(word);

/** Text without addresses, paths, file names, R calls, field names in quotation marks, and braces to be filled. */
const prose = (text: string): string =>
  text
    .replace(/https?:\S+/g, ' ')
    .replace(/\S+\/\S+/g, ' ')
    .replace(/\b[\w-]+\.(?:csv|json|yaml|mdx?|pdf)\b/g, ' ')
    .replace(/[\w.]+\([^)]*\)/g, ' ')
    .replace(/\{\w+\}/g, ' ')
    .replace(/„(?:npm run check|status: \w+|\w+)“/g, ' ');

/** English words in a German text, in their order; what both languages have, names, symbols and code are left out. */
export const englishIn = (text: string): string[] =>
  (
    prose(text)
      .toLowerCase()
      .match(/\p{L}+/gu) ?? []
  ).filter((word) => ENGLISH.has(word));
