// The plain way, to compare with: a label from a list, and the first number to its right on the same line.

const labels = [
  [
    '/stc/pmax',
    /^(?:maximum power|rated power|nominal power|peak power|pmax|p ?mpp|nennleistung|maximalleistung|puissance (?:maximale|nominale|cr[eê]te)|potencia (?:m[aá]xima|nominal|pico)|potenza (?:massima|nominale|di picco)|(?:max\.?|nominaal|piek) ?vermogen)/i,
  ],
  [
    '/stc/vmp',
    /(?:voltage at (?:p ?max|maximum power)|maximum power voltage|operating voltage|\b[vu] ?mpp?\b|mpp-?spannung|nennspannung|tension (?:nominale|à puissance)|tensi[oó]n (?:nominal|a potencia)|tensione (?:nominale|alla massima)|spanning bij)/i,
  ],
  [
    '/stc/imp',
    /(?:current at (?:p ?max|maximum power)|maximum power current|operating current|\bi ?mpp?\b|mpp-?strom|nennstrom|courant (?:nominal|à puissance)|corriente (?:nominal|a potencia)|corrente (?:nominale|alla massima)|stroom bij)/i,
  ],
  [
    '/stc/voc',
    /(?:open.circuit voltage|\b[vu] ?oc\b|leerlaufspannung|circuit ouvert|circuito abierto|circuito aperto|openklem|nullast)/i,
  ],
  ['/stc/isc', /(?:short.circuit current|\bi ?sc\b|kurzschlussstrom|court-circuit|cortocircuito|kortsluitstroom)/i],
  ['/stc/efficiency', /(?:efficiency|wirkungsgrad|rendement|eficiencia|efficienza)/i],
  ['/stc/tolerance', /toleran/i],
  ['/temperature_coefficients/pmax', /(?:coeff?.*(?:p ?max|power|leistung|puissance|potencia|potenza|vermogen))/i],
  ['/temperature_coefficients/voc', /(?:coeff?.*(?:[vu] ?oc|voltage|spannung|tension|tensi[oó]n|tensione|spanning))/i],
  ['/temperature_coefficients/isc', /(?:coeff?.*(?:i ?sc|current|strom|courant|corriente|corrente|stroom))/i],
  ['/noct/temperature', /(?:noct|nmot)/i],
  ['/weight', /^(?:weight|gewicht|poids|peso)/i],
  ['/cells/in_series', /^(?:number of cells|cells|zellen|cellules|c[eé]lulas|celle|cellen)/i],
  [
    '/limits/system_voltage',
    /(?:system voltage|systemspannung|tension.*syst|tensi[oó]n.*sistema|tensione.*sistema|systeemspanning)/i,
  ],
  ['/limits/series_fuse', /(?:fuse|sicherung|fusible|fusibile|zekering)/i],
  [
    '/limits/operating_temperature',
    /(?:operating temp|betriebstemp|temp.*fonctionn|temp.*funcion|temp.*esercizio|bedrijfstemp)/i,
  ],
]

/** A sheet with one model, from the lines of its pages. */
export function naiveSheet(pages) {
  const readings = new Map()
  for (const { number, runs } of pages)
    for (const label of runs) {
      const field = labels.find(([, form]) => form.test(label.text.trim()))?.[0]
      const value = runs
        .filter((r) => Math.abs(r.y - label.y) < 2 && r.x > label.x && /\d/.test(r.text))
        .sort((a, b) => a.x - b.x)[0]
      if (field && value && !readings.has(field))
        readings.set(field, {
          field,
          typed: value.text.replace(/(\d),(\d)/, '$1.$2').replace(/°?\s*℃/, '°C'),
          also: [],
          text: value.text,
          label: label.text,
          page: number,
          box: [0, 0, 0, 0],
        })
    }
  return { pages: pages.length, models: [{ name: '', readings: [...readings.values()] }], problem: null }
}
