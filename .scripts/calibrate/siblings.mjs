import { modelSource } from './model-source.mjs'
import { areaOf, rounded } from './ratings.mjs'
import { round } from './round.mjs'

/** Two roundings are no narrower, and pairs with the very same values must not make it so; estimated. */
const narrowest = 0.001

/** What siblings let expect of each other: how ratings grow from one power class to the next, and how often they agree. */
export async function siblings(rows) {
  // the model's own, so that siblings are those that it finds
  const { pointers, index, kinOf, sharedFields, growing, copied, chance, isCopy, nearestOf, wide } = await modelSource(
    `export { pointers, index } from './evidence.ts'; export { kinOf, sharedFields } from './family/family.ts'; export { copied, chance, isCopy, nearestOf } from './family/nearest-sibling.ts'; export { growing, wide } from './family/ladder.ts'`,
  )
  const all = rows.map((row) => evidenceOf(row, pointers, index))
  const fields = Object.keys(sharedFields)
  const shares = Object.fromEntries(fields.map((name) => [name, { same: [], ofCopies: [] }]))
  const listedAgain = Object.fromEntries(Object.keys(copied).map((name) => [name, []]))
  const pairs = Object.fromEntries(Object.keys(growing).map((name) => [name, []]))
  for (const { one, others } of ofLikeArea(all)) {
    const kin = kinOf(one, others).filter(({ differs }) => differs !== index.length)
    const nearest = nearestOf(
      one,
      kin.map(({ other }) => other),
      { growths: {}, copied: {} }, // what is sought here
    )
    for (const { rung } of nearest.ratings) {
      if (!rung) continue
      const { field, along } = growing[rung.name]
      const now = (p) => one.readings[pointers[p]].value
      pairs[rung.name].push([Math.log(now(along) / rung.beside), Math.log(now(field) / rung.value)])
    }
    for (const { name, field, ofCopies } of nearest.ratings)
      if (ofCopies.length > 0)
        listedAgain[name].push(
          ofCopies.filter((value) => value === one.readings[pointers[field]]?.value).length / ofCopies.length,
        )
    for (const name of fields) {
      const asked = kin.filter(
        ({ other, differs }) => (differs === -1 || differs === index[name]) && other.readings[pointers[index[name]]],
      )
      if (asked.length === 0 || !one.readings[pointers[index[name]]]) continue
      const kind = asked.every(({ other }) => isCopy(one, other)) ? 'ofCopies' : 'same'
      shares[name][kind].push(asked.filter(({ differs }) => differs === -1).length / asked.length)
    }
  }
  return {
    growths: Object.fromEntries(Object.entries(pairs).map(([name, some]) => [name, growth(some, wide)])),
    copied: Object.fromEntries(Object.entries(listedAgain).map(([name, shares]) => [name, agreement(shares, chance)])),
    shared: Object.fromEntries(
      Object.entries(shares).map(([name, { same, ofCopies }]) => [
        name,
        { same: agreement(same, sharedFields[name]), ofCopies: agreement(ofCopies, sharedFields[name]) },
      ]),
    ),
  }
}

/** Each record with the others of about its area, found by order of area as pairs of all are many. */
function* ofLikeArea(all) {
  const sorted = all.filter(({ area }) => area > 0).sort((a, b) => a.area - b.area)
  let first = 0
  for (const one of sorted) {
    while (sorted[first].area < one.area * 0.99) first++
    const others = []
    for (let i = first; i < sorted.length && sorted[i].area < one.area * 1.01; i++)
      if (sorted[i] !== one && sorted[i].technology === one.technology) others.push(sorted[i])
    yield { one, others }
  }
}

function evidenceOf(row, pointers, index) {
  const values = new Map([
    [index.pmax, row.pmax_w],
    [index.vmp, row.vmp_v],
    [index.imp, row.imp_a],
    [index.voc, row.voc_v],
    [index.isc, row.isc_a],
    [index.gamma, rounded(row.gamma_pmp_pct_per_c, 2)],
    [index.beta, rounded(row.beta_voc_pct_per_c, 2)],
    [index.alpha, rounded(row.alpha_isc_pct_per_c, 3)],
    [index.noct, rounded(row.noct_c, 0)],
    [index.cells, row.cells_in_series],
    [index.length, Math.sqrt(areaOf(row))],
    [index.width, Math.sqrt(areaOf(row))],
  ])
  const readings = Object.fromEntries(
    [...values].flatMap(([field, value]) => (value ? [[pointers[field], { value }]] : [])),
  )
  return { technology: row.technology, area: areaOf(row), readings }
}

/**
 * How often a record has the value of its siblings, by maximum likelihood, from the share of them that has its own value.
 * It is never quite always.
 */
function agreement(shares, chance) {
  let same = 0.9
  for (let step = 0; step < 100; step++) {
    const theirs = shares.map((share) => (same * share) / chance / ((same * share) / chance + 1 - same))
    same = (theirs.reduce((sum, part) => sum + part, 0) + 1) / (shares.length + 2)
  }
  return round(same, 3)
}

/** Exponent, and two normals beside the wide density about it, by expectation and maximisation. */
function growth(pairs, wide) {
  let by = 0.8
  let parts = [
    [0.4, 0.002],
    [0.5, 0.01],
  ]
  for (let step = 0; step < 200; step++) {
    const sums = parts.map(() => [0, 0])
    let [xx, xy] = [1e-9, 0.8e-9]
    for (const [x, y] of pairs) {
      const d = y - by * x
      const near = parts.map(
        ([share, sd]) => (share * Math.exp((-d * d) / (2 * sd * sd))) / (sd * Math.sqrt(2 * Math.PI)),
      )
      const far = (1 - parts[0][0] - parts[1][0]) / (Math.PI * wide * (1 + (d / wide) ** 2))
      near.forEach((density, k) => {
        const part = density / (near[0] + near[1] + far)
        sums[k][0] += part
        sums[k][1] += part * d * d
        xx += (part * x * x) / parts[k][1] ** 2
        xy += (part * x * y) / parts[k][1] ** 2
      })
    }
    by = xy / xx
    parts = sums.map(([n, squares]) => [n / pairs.length, Math.max(narrowest, Math.sqrt(squares / n))])
  }
  return { by: round(by, 3), spread: parts.map((part) => part.map((v) => round(v, 3))) }
}
