// One invented sheet: what it prints, in whose words, and what a person would type from it.
import { factsOf, handOf, productOf } from './facts.mjs'

/** @returns { name, language, layout, blocks, models: { name: { pointer: [texts] } } } */
export function sheetOf({ name, layout, draw, most, words, language, rows, random }) {
  const pick = (list) => list[Math.floor(random() * list.length)]
  const product = productOf(rows, random, most)
  const hand = handOf(random, language)
  const facts = product.models.map((model) => factsOf(product, model, hand))
  const truth = product.models.map(() => ({}))
  const book = words[language]
  const chosen = new Map()
  // one of a kind of wording for all ratings of a sheet, so that a sheet does not mix symbols with sentences
  const kind = Math.floor(random() * 12)
  const label = (key) => {
    const own = key.replace(/^(?:stc|noct) /, '')
    if (!chosen.has(own))
      chosen.set(
        own,
        ['pmax', 'vmp', 'imp', 'voc', 'isc'].includes(own) ? book[own][kind % book[own].length] : pick(book[own]),
      )
    return chosen.get(own)
  }
  const note = (key, i) => {
    for (const k of [i].flat())
      for (const [field, texts] of Object.entries(facts[k].get(key).fields)) truth[k][field] ??= texts
    return facts[[i].flat()[0]].get(key)
  }
  const electric = random() < 0.5
  const s = {
    models: product.models,
    label,
    has: (key, i) => facts[i].has(key),
    text: (key, i) => note(key, i).text,
    bare: (key, i) => note(key, i).bare,
    unit: (key) => facts[0].get(key).unit,
    same: (key) => facts.every((f) => f.get(key)?.text === facts[0].get(key)?.text),
    heading: (key) => pick(book.heads[key]),
    conditions: () => ['STC', electric ? 'NOCT' : 'NMOT'],
    lures: () => [...book.lures].sort(() => random() - 0.5).slice(0, 5),
    order: (keys) => (electric ? keys : [...keys].sort(() => random() - 0.5)),
    chance: (p) => random() < p,
  }
  const blocks = draw(s)
  return {
    name,
    language,
    layout,
    title: names(product),
    blocks,
    models: Object.fromEntries(product.models.map((m, i) => [product.models.length > 1 ? m.name : '', truth[i]])),
  }
}

const names = ({ models }) => (models.length > 1 ? models[0].name.replace(/\d+/, 'series') : models[0].name)
