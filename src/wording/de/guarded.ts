import type { GuardedPhrase } from '../words.ts';

/** Phrases that an author's text may not use unsupported (wording.md), in the order of that list. */
export const guarded = (): readonly GuardedPhrase[] => PHRASES;

/** Word edges that know umlauts, which `\b` does not. */
const word = (inner: string) => `(?<!\\p{L})(?:${inner})(?!\\p{L})`;

const PHRASES: readonly GuardedPhrase[] = [
  {
    id: 'identical',
    pattern: word('identisch(?:e[mnrs]?)?'),
    reason:
      'Zählungen zeigen nie, dass zwei Behandlungen identisch sind; sie zeigen, wie weit die beiden auseinander sein können',
    offer:
      '„gleich genug für diesen Zweck“, in einem Claim, den die Daten tragen, oder der Unterschied mit seinem Bereich',
  },
  {
    id: 'the-same',
    pattern: word(
      '(?:ist|sind|war|waren|gingen|ging|keimten|keimte|wuchsen|wuchs) (?:genau |fast |etwa |ungefähr |völlig )?(?:gleich(?: gut| schnell| viele?)?|genauso (?:gut|schnell|viele?))(?! (?:genug|nach|danach|zu|am|im|bei|darauf)(?!\\p{L}))|(?:das gleiche|dasselbe|die gleiche|dieselbe) (?:Ergebnis|Wirkung|Keimung)',
    ),
    reason:
      'Gleichheit braucht einen kleinsten Unterschied, der zählt, vorher festgelegt, und einen Bereich, der darin liegt',
    offer: '„ein Unterschied ließ sich nicht zeigen“, mit dem Bereich',
  },
  {
    id: 'no-effect',
    pattern: word(
      'kein(?:e|en|erlei)? (?:Wirkung|Effekte?|Einfluss|Auswirkung(?:en)?)|ohne (?:jede |jeden )?(?:Wirkung|Effekt|Einfluss)|wirkungslos',
    ),
    reason: 'eine Wirkung, die man nicht sah, kann trotzdem da sein',
    offer: '„eine Wirkung ließ sich nicht zeigen“, mit dem Bereich',
  },
  {
    id: 'no-difference',
    pattern: word('kein(?:e|en|erlei)? (?:wirkliche[nr]? |echte[nr]? |klare[nr]? )?Unterschiede?'),
    reason: 'ein Unterschied, den man nicht sah, kann trotzdem da sein',
    offer: '„ein Unterschied ließ sich nicht zeigen“, mit dem Bereich',
  },
  {
    id: 'proves',
    pattern: word(
      '(?<!kein |keinen |nicht )(?:bewei(?:s|ses|se|sen|st)|bewies(?:en)?|nachgewiesen|erwiesen)(?! (?:noch |aber |hier )?nichts?(?!\\p{L}))|belegt,? dass',
    ),
    reason: 'ein einzelner Versuch beweist nichts; er passt zu manchen Antworten und zu anderen nicht',
    offer: '„die Daten passen zu …“, mit dem Bereich',
  },
  {
    id: 'works',
    pattern: word('(?:wirkt(?:e|en)?(?! (?:auf mich |etwas |viel )?\\p{L}+er(?!\\p{L}))|funktionier(?:t|te|ten|en))'),
    reason: 'es verspricht dasselbe für jedes andere Saatgut und jeden anderen Platz',
    offer: 'was aufging, wie viele von wie vielen, in diesem Versuch',
  },
  {
    id: 'guaranteed',
    pattern: word('(?<!kein |keine |nicht )(?:garantier(?:t|te|en)|Garantie)(?! nichts?(?!\\p{L}))'),
    reason: 'kein Versuch kann versprechen, was beim nächsten Mal aufgeht',
    offer: 'was aufging, wie viele von wie vielen, in diesem Versuch',
  },
  {
    id: 'significant',
    pattern: word('(?:nicht-?|in)?signifikan(?:t(?:e[mnrs]?)?|z)'),
    reason: 'man hält es für „groß“, und über die Größe sagt es nichts',
    offer: 'der Unterschied mit seinem Bereich',
  },
  {
    id: 'days-apart',
    pattern: word('\\d+(?:[.,]\\d+)? Tage? (?:Vorsprung|Rückstand|voraus|hinterher|zurück)'),
    reason: 'wie viele Tage zwischen zwei Behandlungen liegen, weiß man nur so genau, wie die Auszählungen dicht lagen',
    offer: 'die Zahl der Tage mit ihrem Bereich, wie <Num of="difference"/> (<Num of="range"/>) sie geben',
  },
  {
    id: 'hundred-per-cent',
    pattern: '(?<!\\d )(?<!\\d)100[ \\u00A0\\u202F]?(?:%|Prozent)(?!\\s*\\()',
    reason: '100 % von wenigen Samen ist wenig; ohne die Zählung kann das niemand wissen',
    offer: 'die Zählung dazu: „100 % (25 von 25 Samen)“',
  },
  {
    id: 'trend',
    pattern: word(
      'Trend (?:zu|zum|zur|hin)|tendenziell|Tendenz (?:zu|zum|zur)|(?:fast|beinahe|knapp nicht) signifikant',
    ),
    reason: 'ein Unterschied, der fast gezeigt wurde, wurde nicht gezeigt',
    offer: '„ein Unterschied ließ sich nicht zeigen“, mit dem Bereich',
  },
  {
    id: 'doubled',
    pattern: word('verdoppel(?:t|te|ten|n)|doppelt so viele?|halbier(?:t|te|ten|en)|halb so viele?'),
    reason: 'bei weniger als 5 Samen ist das kaum mehr als Zufall',
    offer: 'die beiden Zählungen selbst',
  },
];
