// The words of the manifest are written in English where they belong; an editor wants keys there, and the words of each language in a file of its own.

/** Fields of a manifest that people read; `markdown` is the path of a page, and each language has a page of its own. */
const shown = ['title', 'shortTitle', 'description', 'markdownDescription', 'enumDescriptions', 'altText', 'markdown']

/** What people read of the manifest, each text once. */
export function wordsOf(manifest) {
  const words = new Set()
  mapped(manifest, (text) => (words.add(text), text))
  return [...words]
}

/**
 * The manifest with keys in place of words, and the files of words beside it.
 *
 * @param languages  by language, each word in it; what it lacks stays English
 */
export function withKeys(manifest, languages) {
  const words = wordsOf(manifest)
  const keyOf = new Map(words.map((text, i) => [text, `text${i}`]))
  const fileOf = (say) => Object.fromEntries(words.map((text) => [keyOf.get(text), say(text)]))
  return {
    manifest: mapped(manifest, (text) => `%${keyOf.get(text)}%`),
    files: {
      'package.nls.json': fileOf((text) => text),
      ...Object.fromEntries(
        Object.entries(languages).map(([language, own]) => [
          `package.nls.${language}.json`,
          fileOf((text) => own[text] ?? text),
        ]),
      ),
    },
  }
}

/** The name of the product is the same everywhere. */
const isWords = (text) => typeof text === 'string' && text !== 'Wattproof'

function mapped(value, change, isShown = false) {
  if (Array.isArray(value)) return value.map((one) => mapped(one, change, isShown))
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(
      Object.entries(value).map(([key, one]) => [key, mapped(one, change, shown.includes(key))]),
    )
  return isShown && isWords(value) ? change(value) : value
}
