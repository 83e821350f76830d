import { groupBy } from '../text/group.ts'

/** Words that datasheets and other habits use for our fields and choices, small and with `_` between them. */
const ofPanels: Readonly<Record<string, readonly string[]>> = {
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
  in_series: ['series', 'cells_in_series', 'batteries_in_series', 'panels_in_series'],
  parallel_strings: ['parallel', 'strings', 'cell_strings'],
  noct: ['nmot'],
  output: ['performance', 'power_output', 'power_warranty', 'performance_warranty', 'output_warranty'],
  workmanship: ['product', 'product_warranty', 'workmanship_warranty', 'materials'],
  certificates: ['certifications', 'certification', 'approvals', 'standards'],
  datasheet: ['sheet', 'data_sheet', 'pdf'],
  source: ['file', 'pdf', 'url', 'link'],
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
}

const ofBatteriesAndControllers: Readonly<Record<string, readonly string[]>> = {
  lifepo4: ['lfp', 'lithium_iron_phosphate', 'life_po4'],
  flooded: ['lead_acid', 'wet'],
  agm: ['absorbent_glass_mat'],
  nominal_voltage: ['voltage', 'rated_voltage'],
  capacity: ['rated_capacity', 'nominal_capacity', 'ah'],
  usable_depth: ['dod', 'depth_of_discharge', 'usable', 'usable_capacity'],
  round_trip_efficiency: ['efficiency', 'roundtrip_efficiency'],
  max_voltage: ['voc', 'max_voc', 'pv_voltage', 'max_pv_voltage', 'max_input_voltage', 'max_solar_voltage'],
  max_short_circuit_current: ['isc', 'max_isc', 'short_circuit_current', 'pv_short_circuit_current', 'max_pv_current'],
  max_power: ['power', 'pv_power', 'max_pv_power', 'max_input_power'],
  max_current: ['current', 'rated_current', 'charge_current', 'max_charge_current', 'max_discharge_current'],
  battery_voltages: ['battery_voltage', 'voltages', 'nominal_voltages'],
  self_consumption: ['own_consumption', 'standby', 'idle_current', 'no_load_consumption', 'quiescent_current'],
}

const ofSystems: Readonly<Record<string, readonly string[]>> = {
  boat: ['yacht', 'sailboat', 'sailing_boat', 'motorboat', 'ship'],
  vehicle: ['van', 'camper', 'campervan', 'camper_van', 'motorhome', 'rv', 'truck', 'caravan'],
  cabin: ['house', 'hut', 'cottage', 'home', 'shed'],
  bonded: ['glued', 'adhesive', 'taped', 'stuck', 'stuck_down', 'stuck_on', 'self_adhesive'],
  canvas: ['fabric', 'bimini', 'sewn', 'zip', 'zipped', 'zipper', 'textile'],
  standoff: ['spacers', 'standoffs', 'stand_off', 'raised', 'rail', 'rails', 'feet'],
  'open rack': ['rack', 'pole', 'arch', 'gantry', 'stand', 'ground_mount'],
  dc: ['12_v', '24_v', '48_v', '12v', '24v', '48v', '12_v_dc', '24_v_dc'],
  ac: ['110_v', '120_v', '230_v', '240_v', '110v', '120v', '230v', '240v', '230_v_ac', 'mains'],
  in_parallel: ['parallel', 'strings', 'batteries_in_parallel', 'panels_in_parallel', 'strings_in_parallel'],
  count: ['qty', 'quantity', 'number', 'pieces', 'pcs'],
  fuse: ['breaker', 'main_fuse', 'fuse_rating'],
  power: ['watt', 'watts', 'wattage'],
  current: ['amp', 'amps', 'ampere', 'amperes'],
  energy: ['wh', 'watt_hours', 'wh_day', 'energy_a_day', 'energy_per_day'],
  charge: ['ah', 'amp_hours', 'ah_day', 'charge_a_day', 'charge_per_day'],
  hours: ['hours_a_day', 'hours_per_day', 'hours_day', 'h_day'],
  hottest: ['t_hot', 'max_temperature', 'highest', 'hot'],
  coldest: ['t_cold', 'min_temperature', 'lowest', 'cold'],
  climate: ['weather'],
  keep_out: ['keepout', 'obstacles', 'hatches'],
}

const meaning = groupBy(
  [ofPanels, ofBatteriesAndControllers, ofSystems].flatMap((some) =>
    Object.entries(some).flatMap(([word, others]) => others.map((other) => ({ word, other }))),
  ),
  ({ other }) => other,
)

/** The one of the known words that another word stands for. */
export function synonymOf(word: string, known: readonly string[]): string | null {
  return meaning.get(word)?.find((one) => known.includes(one.word))?.word ?? null
}
