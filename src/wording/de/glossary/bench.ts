/** Words of the bench and of the seed trade: id, term, meaning. */
export const bench: readonly (readonly [id: string, term: string, meaning: string])[] = [
  [
    'abnormal',
    'Anomaler Keimling',
    'Ein Keimling, dem etwas fehlt, das er braucht, um Pflanze zu werden, etwa die Wurzel oder die Triebspitze.',
  ],
  [
    'batch',
    'Charge',
    'Saatgut, das zusammen behandelt oder gelagert wurde: ein Becher zum Einweichen, ein Durchgang beim Trocknen, ein Glas. Seine Aussaaten teilen ihren Zufall.',
  ],
  ['blind', 'Blind zählen', 'Zählen, ohne zu wissen, welche Schale welche ist, damit die Hoffnung nicht mitzählt.'],
  [
    'block',
    'Block',
    'Schalen, die einen Ort oder einen Tag teilen, etwa ein Regalbrett, und unter denen jede Behandlung vorkommt.',
  ],
  [
    'came-up',
    'Aufgegangen (gekeimt)',
    'Was als aufgegangen gilt, steht in jedem Versuch: eine sichtbare Wurzel, ein Bogen über der Erde, ein normaler Keimling.',
  ],
  [
    'check',
    'Auszählung',
    'Ein Tag, an dem jemand nachsah und zählte. Was zwischen zwei Auszählungen geschah, hat niemand gesehen.',
  ],
  ['control', 'Kontrolle', 'Die Behandlung, mit der die anderen verglichen werden; oft: „nichts getan“.'],
  ['dead-seed', 'Toter Samen', 'Ein Samen, der am Ende weder hart noch frisch ist und keinen Keimling zeigt.'],
  ['desiccant', 'Trockenmittel', 'Etwas, das der Luft um das Saatgut Wasser nimmt, etwa Kieselgel.'],
  [
    'fresh-seed',
    'Frischer Samen',
    'Ein Samen, der Wasser aufnahm, aber nicht aufging und noch fest ist: Vielleicht ruht er.',
  ],
  ['hard-seed', 'Harter Samen', 'Ein Samen, der kein Wasser aufnahm, weil seine Schale keines einlässt.'],
  [
    'half-life',
    'Halbwertszeit',
    'Die Lagerzeit, nach der von den gesäten Samen noch die Hälfte aufgeht, nach der Linie durch die Prüfungen.',
  ],
  ['lot', 'Partie', 'Eine Menge Saatgut einer Kultur mit einer gemeinsamen Geschichte.'],
  [
    'maguire',
    'Keimrate nach Maguire',
    'Was neu aufging, geteilt durch den Tag, über alle Auszählungen zusammengezählt. Sie vermengt die Zahl mit dem Tempo.',
  ],
  ['mean-time', 'Mittlere Zeit bis zum Aufgehen (MGT)', 'Der mittlere Tag, an dem die Samen aufgingen, die aufgingen.'],
  ['moisture', 'Feuchtegehalt', 'Das Wasser im Saatgut als Anteil an seiner ganzen Masse, das Wasser eingerechnet.'],
  ['normal-seedling', 'Normaler Keimling', 'Ein Keimling, der alles hat, um Pflanze zu werden.'],
  [
    'orthodox',
    'Saatgut, das Trocknen verträgt (orthodox)',
    'Saatgut, das man trocknen und einfrieren kann; die meisten Gartenkulturen. Andere Arten sterben beim Trocknen.',
  ],
  ['outcome', 'Zielgröße', 'Was gemessen und verglichen wird; die wichtigste ist die, nach der die Frage fragt.'],
  [
    'plan',
    'Plan',
    'Was vor der Aussaat festgelegt wurde: Frage, Behandlungen, Plätze, Tage der Auszählung, Zielgrößen. Eingefroren mit Datum und Prüfsumme.',
  ],
  ['pooled', 'Zusammengefasst', 'Aus mehreren Partien oder mehreren Versuchen zusammengerechnet.'],
  [
    'repeat',
    'Wiederholung durch andere',
    'Dieselbe Frage noch einmal gestellt, von anderen, mit anderem Saatgut oder an einem anderen Ort.',
  ],
  [
    'side-by-side',
    'Versuch Seite an Seite',
    'Ein Versuch, in dem die Behandlungen zur selben Zeit am selben Ort wachsen und sich nur in einer Sache unterscheiden.',
  ],
  [
    'sowing',
    'Aussaat',
    'Eine Schale, ein Topf oder eine Reihe, auf einmal gesät, mit Saatgut einer Partie unter einer Behandlung.',
  ],
  ['spread-time', 'Spanne (T75 − T25)', 'Die Tage zwischen einem Viertel und drei Vierteln dessen, was aufging.'],
  ['t50', 'T50', 'Der Tag, bis zu dem die Hälfte dessen aufgegangen war, was am Ende aufging.'],
  ['treatment', 'Behandlung', 'Was mit dem Saatgut getan wurde, oder nicht getan.'],
  ['trait', 'Merkmal', 'Etwas, das an Pflanzen gemessen wird: Höhe, Masse, Zahl der Blätter.'],
  ['water-lost', 'Wasserverlust', 'Die Masse, die Saatgut beim Trocknen verlor, als Anteil an seiner Masse am Anfang.'],
];
