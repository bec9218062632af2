/** Pages of lots, people, notices and the site itself. */
export const pages = {
  'lot.id': 'Lot',
  'lot.named': 'lot {lot}',
  'lot.genus': 'Genus',
  'lot.epithet': 'Species',
  'lot.below': 'Below the species',
  'lot.description':
    'Seed lot {lot}, {name}: its passport, every test of how much came up, and the trials that used it.',
  'lot.passport': 'Passport',
  'lot.passportOf': 'What is known about lot {lot}',
  'lot.what': 'What',
  'lot.descriptor': 'Descriptor',
  'lot.descriptorNote':
    'Descriptors are those of the open passport standard of seed collections (FAO and Bioversity, Multi-Crop Passport Descriptors 2.1; from memory). Where a cell is empty, that standard has no descriptor that means the same.',
  'lot.several': 'Several trials use this id for seed that they describe differently.',
  'lot.tests': 'How much came up, test by test',
  'lot.testsNone': 'No finished trial has counted what came up of this lot.',
  'lot.testsCaption': 'Every test of this lot',
  'lot.countOn': '{count} of {seeds}, day {day}',
  'lot.testsNote':
    'Trials differ in bench, weather, compost and treatment. A gap between tests of different trials is no sign that the seed has aged.',
  'chart.lot.title': '{lot}: tests from {from} to {to}',
  'chart.lot.subtitle':
    'Marks: what came up in one test. Lines through them: what the data fit with. Joined: the same treatment of the same trial.',
  'chart.lot.description': 'Share that came up in each test of a seed lot, by date. {values}',
  'chart.lot.date': 'Sown (year and month)',

  'people.intro': 'Everyone who is named in a trial here, and what they did.',
  'person.description': '{name}: what they did in trials here, and which trials those are.',
  'person.role': 'In the trial’s words',
  'person.rolesCaption': 'Roles',
  'person.creditNote':
    'The second column gives the role of CRediT, the open taxonomy of contributor roles (ANSI/NISO Z39.104-2022), where one fits what the trial says.',
} as const;
