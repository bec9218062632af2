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
  'lot.testsCaptionDay': 'Every test of this lot, counted on day {day}',
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

  'home.limits': 'What limits it most: {limits}',
  'home.limitsNone': 'No caution and no serious caveat; the report says what it cannot tell.',
  'home.due.count': 'Next: count of day {at}',
  'home.due.measure': 'Next: measuring on day {at}',
  'home.due.test': 'Next: test after {at} of storage',
  'calendar.count': '{title}: count of day {at}',
  'calendar.measure': '{title}: measuring on day {at}',
  'calendar.test': '{title}: test after {at} of storage',
  'calendar.link': 'Its days for a calendar (ICS)',
  'home.dueNote': 'Dates are those of each trial’s own plan.',

  'about.who': '{name} publishes the trials on these pages.',
  'about.since': 'The group has worked together since {year}.',
  'about.reading':
    'Each finding has a few words and a shape. The line is the control, that is, what the others are compared with; the seed is the treatment.',
  'about.shape.above': 'A higher number than the control: more came up, taller, more days.',
  'about.shape.below': 'A lower number than the control: fewer came up, shorter, fewer days.',
  'about.shape.level': 'Alike for the purpose: any difference is smaller than a size that was agreed before counting.',
  'about.shape.open': 'Open: the data fit with a difference and with none. That is not proof of sameness.',
  'about.shape.question':
    'Cannot tell, or cause unclear: one tray of each, say, or something else that differed as well. A first look, worth repeating.',
  'about.probably':
    'The word “probably” stands where something weakens a finding: places that were not drawn by lot, say, or a question that was fixed after the first count. The report names it.',
  'about.range':
    'Every number comes with the range that the data fit with. A wide range is no fault of the growers; it says how much such a trial can tell.',
  'about.more': 'More in',
  'about.repeat':
    'Repeat a trial: every report offers a repeat kit with its plan, blank sheets and empty files. Results that differ are as welcome as results that agree.',
  'about.own':
    'Or ask something yourself: one question, one difference between treatments, several trays of each, places drawn by lot, all fixed before the first count. Then write to the address below.',
  'about.licence': 'Licence',
  'about.licenceText': 'Text, pictures and data may be used under',
  'about.licenceOwn': 'A trial that names another licence goes by its own.',
  'about.privacy': 'Privacy',
  'about.pictures': 'Pictures are published without the place, the time and the camera that a phone writes into them.',
  'about.access': 'Accessibility',
  'about.accessText':
    'These pages are made to meet WCAG 2.2, level AA. They work by keyboard, with a screen reader, enlarged, dark and on paper, and every chart stands as text and as a table too. Where they do not, please write.',
  'about.noContact': 'No address is given. Each report names its authors.',

  'nav.notices': 'Safety',
  'notices.intro':
    'Where people, animals or plants can be hurt. A report shows the notices that its own facts ask for.',
  'notices.local': 'Local rules and qualified advice come first, whatever stands here.',
  'notices.in': 'Shown in {trials}',
} as const;
