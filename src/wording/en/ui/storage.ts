/** Storage series: their numbers, and when to test again. */
export const storage = {
  'storage.lines': 'Survival lines',
  'storage.compared': 'The lines compared',
  'storage.halfLife': 'Half-life',
  'storage.fieller': 'Fieller limits, 95 % (years)',
  'storage.ki': 'Probits at the start, Kᵢ (standard error)',
  'storage.slope': 'Slope, probits a year (standard error)',
  'storage.sigma': 'σ, years for a fall of one probit',
  'storage.withError': '{value} ({error})',
  'storage.common-slope': 'One slope for all',
  'storage.common-line': 'One line for all',
  'storage.noForecast': '{tests}; nothing is said of the time after the last of them.',
  'retest.title': 'Testing it again',
  'retest.note':
    'Dates follow from the start of storage and the plan. Nothing is forecast: the level is held against the last test.',
  'storage.testDate': 'Test dates: {number}',
} as const;
