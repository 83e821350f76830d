/** Words that datasheets and other habits use for our fields and choices, small and with `_` between them. */
const synonyms: Readonly<Record<string, readonly string[]>> = {
  pmax: ['wp', 'pmp', 'pmpp', 'pnom', 'power', 'max_power', 'rated_power', 'nominal_power', 'peak_power', 'p_max'],
  vmp: ['vmpp', 'vpm', 'umpp', 'v_mp', 'max_power_voltage', 'operating_voltage'],
  imp: ['impp', 'ipm', 'i_mp', 'max_power_current', 'operating_current'],
  voc: ['ocv', 'uoc', 'v_oc', 'open_circuit_voltage'],
  isc: ['scc', 'i_sc', 'short_circuit_current'],
  efficiency: ['eff', 'module_efficiency'],
  maker: [
    'brand',
    'manufacturer',
    'make',
    'hersteller',
    'fabricant',
    'fabricante',
    'produttore',
    'costruttore',
    'fabrikant',
  ],
  name: ['model', 'model_name', 'modell', 'bezeichnung', 'modele', 'modelo', 'modello'],
  weight: ['mass'],
  size: ['dimensions', 'dimension', 'measurements'],
  thickness: ['height', 'depth'],
  temperature_coefficients: [
    'temp_coefficients',
    'tempco',
    'temp_coeffs',
    'temp_coefs',
    'coefficients',
    'temperature_coeffs',
  ],
  series_fuse: ['max_fuse', 'fuse', 'max_series_fuse', 'fuse_rating', 'max_fuse_rating'],
  system_voltage: ['max_system_voltage', 'max_voltage'],
  noct: ['nmot'],
  price: ['cost', 'preis', 'prix', 'precio', 'prezzo', 'prijs'],
  warranty: ['guarantee', 'garantie', 'garantia', 'garanzia'],
  mono: ['monocrystalline', 'mono_si', 'monocristalline'],
  poly: ['polycrystalline', 'multicrystalline', 'multi'],
  'back-contact': ['ibc'],
  hjt: ['heterojunction', 'shj'],
  'a-si': ['amorphous'],
  cigs: ['cis'],
  flexible: ['semi_flexible', 'bendable'],
  folding: ['foldable', 'portable'],
  rigid: ['framed'],
  glass: ['tempered_glass'],
  lifepo4: ['lfp', 'lithium_iron_phosphate'],
  flooded: ['lead_acid', 'wet'],
  boat: ['yacht', 'sailboat', 'sailing_boat', 'motorboat', 'ship'],
  vehicle: ['van', 'camper', 'campervan', 'camper_van', 'motorhome', 'rv', 'truck', 'caravan'],
  cabin: ['house', 'hut', 'cottage', 'home', 'shed'],
  bonded: ['glued', 'adhesive', 'taped', 'stuck'],
  canvas: ['fabric', 'bimini', 'sewn'],
  standoff: ['spacers', 'standoffs', 'stand_off', 'raised'],
  'open rack': ['rack', 'pole', 'arch', 'gantry'],
}

const meaning = new Map(Object.entries(synonyms).flatMap(([word, others]) => others.map((other) => [other, word])))

/** The one of the known words that another word stands for. */
export function synonymOf(word: string, known: readonly string[]): string | null {
  const meant = meaning.get(word)
  return meant !== undefined && known.includes(meant) ? meant : null
}
