const codes = new Set(
  `AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CLF
  CLP CNY COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HRK HTG
  HUF IDR ILS INR IQD IRR ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD
  MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF
  SAR SBD SCR SDG SEK SGD SHP SLE SLL SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD UYU
  UZS VED VES VND VUV WST XAF XCD XCG XOF XPF YER ZAR ZMW ZWG ZWL`.split(/\s+/),
)

/**
 * Is it an ISO 4217 code that goods are priced in? Funds, metals and testing codes are left out; codes that were
 * replaced lately (HRK, ANG, BGN, SLL, ZWL) stay, since older quotes carry them.
 *
 * @source ISO 4217, as listed by Debian's iso-codes and, for XCG and ZWG, by Unicode CLDR
 */
export const isCurrency = (code: string): boolean => codes.has(code)

/** Codes for completion, the usual ones first. */
export const currencyCodes: readonly string[] = [
  ...new Set(['USD', 'EUR', 'GBP', 'CAD', 'AUD', 'NZD', 'JPY', 'CNY', 'CHF', 'SEK', 'NOK', 'DKK', ...codes]),
]

const dollars = [
  'USD',
  'CAD',
  'AUD',
  'NZD',
  'SGD',
  'HKD',
  'MXN',
  'BBD',
  'BMD',
  'BND',
  'BSD',
  'BZD',
  'FJD',
  'GYD',
  'JMD',
  'KYD',
]
const moreDollars = ['LRD', 'NAD', 'SBD', 'SRD', 'TTD', 'TWD', 'XCD', 'ARS', 'CLP', 'COP', 'DOP', 'UYU']
const yen = ['JPY', 'CNY']

/** What a sign or a word may stand for, likeliest first. One code where the trade knows only one. */
export const currencySigns: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    $: [...dollars, ...moreDollars],
    dollar: dollars,
    dollars: dollars,
    '¥': yen,
    yen: ['JPY'],
    yuan: ['CNY'],
    '€': ['EUR'],
    euro: ['EUR'],
    euros: ['EUR'],
    '£': ['GBP', 'EGP', 'FKP', 'GIP', 'SHP'],
    kr: ['SEK', 'NOK', 'DKK', 'ISK'],
    '₹': ['INR'],
    '₩': ['KRW'],
    '₽': ['RUB'],
    '₺': ['TRY'],
    US$: ['USD'],
    A$: ['AUD'],
    AU$: ['AUD'],
    C$: ['CAD'],
    CA$: ['CAD'],
    NZ$: ['NZD'],
    S$: ['SGD'],
    HK$: ['HKD'],
    R$: ['BRL'],
  }),
)
