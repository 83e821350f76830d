import type { Sheet } from '../../server/src/sheets/sheet.ts'

/** What is wrong with the answer to a sheet of a stranger, in words. */
export function complaints({ models, pages, problem }: Sheet, took: number): readonly string[] {
  const readings = models.flatMap((model) => model.readings)
  return [
    ...(took > 9500 ? [`it took ${Math.round(took)} ms`] : []),
    ...(problem !== null && readings.length > 0 ? ['it has values and a problem'] : []),
    ...(problem === null && readings.length === 0 ? ['it has neither values nor a problem'] : []),
    ...(problem !== null && !/^[a-z]/i.test(problem) ? [`its problem is no sentence: ${problem}`] : []),
    ...readings
      .filter(({ box, page }) => !box.every(Number.isFinite) || !(1 <= page && page <= Math.min(50, pages)))
      .map(({ field, page, box }) => `${field} lies at ${box.join(' ')} on page ${page}`),
    ...readings.filter(({ typed }) => /NaN|Infinity|undefined/.test(typed)).map(({ field }) => `${field} is no value`),
  ]
}
