import { phraseInWords, type Phrase } from '../wording/phrase.ts'

/** The command could not do its work: exit code 2 and this one sentence on standard error, in the language that is asked for. */
export class CouldNotRun extends Error {
  readonly said: Phrase

  constructor(said: Phrase) {
    super(phraseInWords(said))
    this.said = said
  }
}
