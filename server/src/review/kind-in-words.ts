import { translated, type Bundle } from '../wording/bundle.ts'
import { inCatalogue } from '../wording/phrase.ts'

const kinds = { boat: inCatalogue`boat`, vehicle: inCatalogue`vehicle`, cabin: inCatalogue`cabin` } as const

/** What a system is for. */
export const kindInWords = (kind: keyof typeof kinds, bundle?: Bundle): string => translated(kinds[kind], bundle)
