/** README of the repeat kit, a paragraph each. */
export const kit = {
  'kit.title': 'Repeat kit for “{title}”. The original report is at:',
  'kit.folder':
    'Copy the folder “{folder}” into content/trials of a copy of Fairsown. It holds the question, the treatments, the outcomes and the differences that matter as the original has them.',
  'kit.fill':
    'Write your name into people.yaml and your own seed into lots.yaml: supplier, harvest and storage are those of your seed, not of the original. “npm run check” tells what is still missing.',
  'kit.layout':
    'sowings.csv is a layout drawn at random for this kit. Place the containers in the order of the column “position”. The draw can be repeated from the seed text “{seed}”. All copies of this kit hold the same layout.',
  'kit.single':
    'The original had a single container for some lot and treatment. One container cannot tell a treatment from the container it was in. Sow several of each, a row in sowings.csv for every one, placed at random.',
  'kit.plan':
    'Change the plan, if you must, before you sow, and say what differs from the original. A change made after the first count makes the result weaker.',
  'kit.counts':
    'The folder “sheets” holds sheets to print and to write on. counts.csv has a row for every sowing on every day of counting. Numbers are totals up to that day. An empty cell means not checked, which is not zero.',
  'kit.finish':
    'When you sow, write the date into trial.yaml as “sown” and set “status: growing”; after the last count, “status: finished”. Leave “repeats” as it is: it links your report to the original.',
  'kit.conditions':
    'Conditions of the original; write down your own in trial.yaml under “conditions”, whether they are the same or not:',
} as const;
