const record = /(\.(panel|controller|battery|climate|system)\.(ya?ml|json)|(^|\/)wattproof\.ya?ml)$/i

/** The same files for the editor's own matching, which knows globs only. */
export const recordGlob = '**/{wattproof.{yaml,yml},*.{panel,controller,battery,climate,system}.{yaml,yml,json}}'

/** Folders that hold other people's files. */
export const skippedGlob = '**/{node_modules,.git}/**'

export function isRecord(path: string): boolean {
  return record.test(path)
}
