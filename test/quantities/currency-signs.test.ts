import { expect, test } from 'vitest'
import { currencyCodes, currencySigns, isCurrency } from '../../server/src/quantities/currencies.ts'

// source: ISO 4217; signs as Unicode CLDR 44 gives them for English

test.each([
  [
    '$',
    'USD CAD AUD NZD SGD HKD MXN BBD BMD BND BSD BZD FJD GYD JMD KYD LRD NAD SBD SRD TTD TWD XCD ARS CLP COP DOP UYU',
  ],
  ['dollars', 'USD CAD AUD NZD SGD HKD MXN BBD BMD BND BSD BZD FJD GYD JMD KYD'],
  ['¥', 'JPY CNY'],
  ['yen', 'JPY'],
  ['yuan', 'CNY'],
  ['€', 'EUR'],
  ['euro', 'EUR'],
  ['euros', 'EUR'],
  ['£', 'GBP EGP FKP GIP SHP'],
  ['kr', 'SEK NOK DKK ISK'],
  ['₹', 'INR'],
  ['₩', 'KRW'],
  ['₽', 'RUB'],
  ['₺', 'TRY'],
  ['US$', 'USD'],
  ['A$', 'AUD'],
  ['AU$', 'AUD'],
  ['C$', 'CAD'],
  ['CA$', 'CAD'],
  ['NZ$', 'NZD'],
  ['S$', 'SGD'],
  ['HK$', 'HKD'],
  ['R$', 'BRL'],
])('%s may be %s', (sign, codes) => {
  expect(currencySigns.get(sign)).toEqual(codes.split(' '))
  expect(codes.split(' ').filter((code) => !isCurrency(code))).toEqual([])
})

test('the usual codes are proposed first, and each once', () => {
  expect(currencyCodes.slice(0, 12).join(' ')).toBe('USD EUR GBP CAD AUD NZD JPY CNY CHF SEK NOK DKK')
  expect(new Set(currencyCodes).size).toBe(currencyCodes.length)
  expect(currencyCodes.every(isCurrency)).toBe(true)
})
