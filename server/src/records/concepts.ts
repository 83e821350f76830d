/**
 * What the words of a datasheet speak of, in English, German, French, Spanish, Italian and Dutch: parts of words without
 * accents, so that `Leerlaufspannung`, `U_oc` and `open-circuit voltage` say the same two things. A label that nobody
 * listed is understood as far as its parts are; the unit, the range and the other values of the table say the rest.
 */
const words = {
  voltage: 'volt|spannung|tensi|spanning',
  current: 'current|amper|\\bamps?\\b|strom|corrent|corriente|intensi|courant|stroom',
  power: 'power|watt|leistung|potenc|puissanc|vermogen|potenza|output|\\bpmax|\\bp ?mpp?\\b|\\bpm\\b|\\bp max',
  open: 'open|no current|without load|ohne last|sans charge|sin carga|senza carico|zonder last|onbelast|idle|offen|leerlauf|no.?load|abiert|ouvert|\\bvide\\b|vacio|openklem|nullast|apert|vuoto|\\b[vu] ?(?:oc|co)\\b|\\boc\\b|unloaded|disconnect|unbelast',
  short:
    'short|no voltage|bridg|gebruck|\\bi c\\.?-?c\\b|\\bs ?\\/ ?c\\b|kurz|corto|court|kortsluit|\\bi ?(?:sc|cc|k)\\b|\\bsc\\b|joined',
  peak: 'mpp|\\bmp\\b|\\b[vui] ?mp?\\b|\\b[vui] ?pm(?:ax)?\\b|max|peak|optim|operating|working|rated|nominal|nenn|betrieb|arbeit|load|pico|crete|puntal|piek|picco|lavoro|travail|trabajo|funcion|fonctionn|nominale|at power|bei last|\\bbest\\b|design',
  system:
    'system|systeem|sistem|string volt|isolation|insulation|reihe|iec|\\bul\\b|series volt|serie?volt|d\\.?c\\.? volt|dauerspannung|permissible|zulass|anlage|installation|impianto',
  fuse: 'fuse|fusib|sicherung|zekering|over.?current|reverse|ruckstrom|uberstrom|inverse|invers|retour|breaker|protec|schutz|beveilig|terugstroom|calibre|fusion',
  efficiency:
    'effic|eficien|\\beff\\b|\\brend\\b|wirkungsgrad|rendement|rendim|conversion|η|\\beta\\b|ausbeute|yield per',
  tolerance:
    'toler|sort|abweich|deviation|classif|selection|binning|variation|spread|genauig|ecart|scarto|desviaci|afwijk|streuung|production|positive',
  coefficient:
    'coef|koef|koeff|\\btk\\b|\\btc\\b|coeff|temperature depend|per degree|drift|temperaturgang|gradient|change of|variation of|per kelvin|thermal rating',
  noct: 'noct|nmot|tonc|tnfc|tnoc|nominal operating|normal operating|operating cell|nennbetrieb|nominale celtemp|module operating temp',
  temperature: 'temp|heat|therm|warm',
  operating:
    'operat|betrieb|working|funcion|fonctionn|esercizio|bedrijf|servic|einsatz|permit|zulass|range|bereich|rango|plage|intervallo|modul|gebruik|utilis|use\\b',
  storage:
    'storage|\\bstock|stocc|lager|almacen|stockage|opslag|magazz|transport|ambient|umgebung|ambiant|ambiente|omgeving',
  length: 'length|lang|largo|longitud|longueur|lengte|lunghezza|long side|lunga',
  width: 'width|breit|ancho|anchura|largeur|breedte|larghezza|short side|\\bwide\\b',
  thickness:
    'thick|dick|stark|height|hohe|alto|altura|espesor|grosor|epaisseur|hauteur|dikte|hoogte|spessor|altezz|depth|tiefe|profond|fondo|frame height|rahmenh|bauhoh',
  size: 'dimension|size|abmess|masse\\b|\\bmass\\b|\\bmasz|masze|medida|tamano|taille|mesure|afmeting|maten|misur|ingombr|format|footprint|outline|l ?x ?[wb]|measurements|external',
  weight: 'weight|\\bwt\\b|gewicht|\\bpeso|poids|masse|massa|\\bmass\\b|weigh|heft',
  cells: 'cell|\\bcel(?:[red]|\\b)|zell|celul|wafer',
  bend: 'bend|bieg|curv|courb|buig|flexib|krumm|piega|flex|arch|bow|wolb|cintrag|dobl',
  radius: 'radius|radio|rayon|raggio|straal',
  pallet:
    'pallet|palet|bancal|pack|embal|verpack|verpak|imball|contain|ship|stuck pro|pieces|piezas|pezzi|\\bpcs|karton|carton|box\\b|crate|gross|brutto|conditionnement|versand|logisti|truck|transport|lkw|kiste|caisse|caja|scatole|doos\\b|stack',
  parts:
    'frame|rahmen|marco|cadre|cornice|junction|anschluss|cable|kabel|cabl|cavo|connector|connect|steck|glass|glas|verre|vidrio|vetro|cover|front|back|ruck(?:seite|folie)|snow|schnee|wind|hail|hagel|grele|granizo|grandine|diode|bypass|hole|bohr|screw|grommet|lead|wire|draht|film|folie|foil|adhesive|bond|measur|messung|misura',
  rear: 'rear|bifacial|bifazial|ruckseit|backside|back side|gain|posterior|arriere|achter|retro',
  model:
    'model|type|typ\\b|modul\\b|module$|article|artikel|part no|item|product|referen|variant|version|series|serie\\b|code|order|best\\.?-?nr|sku',
} as const

export type Concept = keyof typeof words

const forms = Object.entries(words).map(([name, form]) => [name as Concept, new RegExp(form, 'u')] as const)

/** Lower case without accents; signs of Greek as words. */
export const folded = (text: string): string =>
  text
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[_{}]/g, ' ')
    .replace(/\s+/g, ' ')

const known = new Map<string, ReadonlySet<Concept>>()

/** The concepts that a text speaks of. */
export function conceptsIn(text: string): ReadonlySet<Concept> {
  const before = known.get(text)
  if (before) return before
  const plain = folded(text)
  const found = new Set(forms.filter(([, form]) => form.test(plain)).map(([name]) => name))
  if (known.size > 20000) known.clear()
  known.set(text, found)
  return found
}

/** Which rating a symbol in a text names: `P_max`, `Uoc`, `I sc`, `Vmpp`. Only in capitals: `in` and `voc` are words. */
export function symbolIn(text: string): 'pmax' | 'vmp' | 'imp' | 'voc' | 'isc' | null {
  const plain = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\d]+/gu, ' ')
  const found = symbols.filter(([form]) => form.test(plain)).map(([, name]) => name)
  return found.length === 1 ? found[0]! : null
}

const symbols = [
  [/\bP ?(?:[mM]|[mM][pP]|[mM][pP][pP]|[mM][aA][xX]|[nN]om|N|peak|STC)\b|\bWp\b/, 'pmax'],
  [/\b[VU] ?(?:[mM]|[mM][pP]|[mM][pP][pP]|[pP][mM]|pmax|[pP][mM][pP]|[mM]ax|MPP STC|N|R)\b/, 'vmp'],
  [/\bI ?(?:[mM]|[mM][pP]|[mM][pP][pP]|[pP][mM]|pmax|[pP][mM][pP]|[mM]ax|N|R)\b/, 'imp'],
  [/\b[VU] ?(?:[oO][cC]|[cC][oOaA]|L|0)\b/, 'voc'],
  [/\bI ?(?:[sS][cC]|[cC][cC]|[kK])\b/, 'isc'],
] as const

/** Standard conditions or nominal ones, where a text says so. */
export function conditionIn(text: string): 'stc' | 'noct' | null {
  const plain = folded(text)
  if (/noct|nmot|tonc|tnfc|tnoc|\b800 ?w/.test(plain)) return 'noct'
  return /\bstc\b|\b1 ?000 ?w|standard test|standardtest|(?:prueba|ensayo|condi\w+)s? (?:de prueba )?(?:estandar|standard)/.test(
    plain,
  )
    ? 'stc'
    : null
}
