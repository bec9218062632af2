/** Storage series: their numbers, and when to test again. */
export const storage = {
  'storage.lines': 'Überlebenslinien',
  'storage.compared': 'Die Linien im Vergleich',
  'storage.halfLife': 'Halbwertszeit',
  'storage.fieller': 'Fieller-Grenzen, 95 % (Jahre)',
  'storage.ki': 'Probits am Anfang, Kᵢ (Standardfehler)',
  'storage.slope': 'Steigung, Probits je Jahr (Standardfehler)',
  'storage.sigma': 'σ, Jahre für einen Rückgang um ein Probit',
  'storage.withError': '{value} ({error})',
  'storage.common-slope': 'Eine Steigung für alle',
  'storage.common-line': 'Eine Linie für alle',
  'storage.noForecast': '{tests}; über die Zeit nach dem letzten wird nichts gesagt.',
  'retest.title': 'Wieder prüfen',
  'retest.note':
    'Die Daten folgen aus dem Beginn der Lagerung und dem Plan. Es wird nichts vorausgesagt: Die Grenze wird an die letzte Prüfung gehalten.',
  'storage.testDate': 'Prüftermine: {number}',
} as const;
