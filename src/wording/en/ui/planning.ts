/** The command `plan`: what it asks, warns of and writes into files. */
export const planning = {
  'planning.ask.title': 'A short title',
  'planning.ask.question': 'What do you want to know? One question',
  'planning.ask.varies': 'What does the question change on purpose?',
  'planning.ask.control': 'What happens to the seed that is not treated (the control)?',
  'planning.ask.treatment': 'What is done to the other seed?',
  'planning.ask.author': 'Your id, a short word',
  'planning.ask.name': 'Your name, as it is to be printed',
  'planning.ask.lot': 'Which seed?',
  'planning.ask.otherLot': 'other seed',
  'planning.ask.newLot': 'An id for this seed, such as leek-2025',
  'planning.ask.crop': 'Which crop?',
  'planning.ask.species': 'Its botanical name',
  'planning.ask.container': 'What is one sowing?',
  'planning.ask.containerUsual': 'a tray',
  'planning.ask.treated': 'How is the treatment given?',
  'planning.ask.block': 'Are there shelves, benches or days that differ? Name one (shelf), or leave it empty',
  'planning.ask.germinated': 'When does a seed count as up?',
  'planning.ask.days': 'Days of counting after sowing, with commas',
  'planning.ask.matters': 'The smallest difference that would matter to you, in seedlings of 100',
  'planning.ask.base': 'Of 100 untreated seeds, about how many come up?',
  'planning.ask.trays': 'How even are sowings that are treated alike?',
  'planning.ask.seeds': 'Seeds in each sowing',
  'planning.ask.each': 'Sowings of each treatment (proposed: as many as show the difference 4 times in 5)',
  'planning.ask.blind': 'Count without knowing which is which? (recommended)',
  'planning.ask.write': 'Write these files?',
  'planning.trays.even': 'very even',
  'planning.trays.usual': 'as usual',
  'planning.trays.uneven': 'they differ a lot',

  'planning.proposed': 'Proposed: {each} of each treatment and lot, with {seeds} seeds in each.',
  'planning.heed': 'Before you sow',
  'planning.doubt.one-each':
    'One sowing of each: the treatment cannot be told from ordinary luck between sowings. Sow at least 4 of each.',
  'planning.doubt.two-changes':
    '{treatment} differs from the control in more than one thing. Whatever is found, nobody can tell which of them did it. Change one thing only.',
  'planning.doubt.unequal-soak':
    '{treatment} and the control are soaked for different times, and soaking is not the question. Soak both alike.',
  'planning.doubt.at-once':
    'All seed is treated in one go, so whatever goes wrong or right in it is in all sowings. Treat the seed of each sowing by itself.',
  'planning.doubt.in-batches':
    'Seed is treated in batches: make at least two of each treatment, and write into the column “batch” of sowings.csv which sowing came from which.',
  'planning.doubt.treated-unknown':
    'It is not said how the treatment is given. Say under “treated” whether each sowing is treated by itself.',
  'planning.doubt.no-margin':
    'No smallest difference that matters is set. Without it nobody will be able to say that two treatments are alike.',
  'planning.doubt.many-comparisons':
    '{comparisons} comparisons are made. With that many, only a difference of about {detectable} per 100 is shown firmly 4 times in 5, and {matters} was to matter. Ask fewer questions, or sow more.',
  'planning.doubt.two-blocks': 'Blocks help from three on. With fewer the sowings are compared as if there were none.',
  'planning.doubt.sown-before': 'The plan is fixed today, after the day of sowing ({sown}).',
  'planning.doubt.not-blind':
    'Whoever counts will know which is which. Hope can then lean on the count; “blind: yes” hides the treatments.',

  'planning.written': 'The trial stands in {folder}:',
  'planning.key':
    'The key, which says which sowing gets which treatment, is kept apart: {file}. Whoever sows needs it; whoever counts does not look. Keep a second copy. After the last count, put key.csv into the folder of the trial as it is, byte for byte.',
  'planning.seed': 'Drawn by lot from the random seed “{seed}”. The same plan with this seed draws the same layout.',
  'planning.seedInKey': 'The random seed stands in the key only.',
  'planning.digest': 'Plan fixed on {date}, digest {digest}. Write it on a sheet that others keep.',
  'planning.next':
    'When you sow, write the date into trial.yaml (sown: {today}) and set “status: growing”; after the last count, “status: finished”. “npm run check -- {trial}” tells whether all is well.',

  'planning.filePlan': 'Written when the plan was fixed. Do not edit: the digest would no longer fit.',
  'planning.fileSown': 'When you have sown: “status: growing”, and the date, such as\nsown: 2026-04-04',
  'planning.fileConditions':
    'What it grew in goes under the key conditions as you go along: substrate, water, light, temperature, place',
  'planning.fileInterests':
    'Who paid, and who gains from the result, is asked for on every trial:\ninterests: seed bought at full price; no one paid for this trial',
} as const;
