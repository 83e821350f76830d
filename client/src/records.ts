const record = /(\.(panel|controller|battery|climate|system)\.(ya?ml|json)|(^|\/)wattproof\.ya?ml)$/i

/** Folders that hold other people's files. */
export const skippedGlob = '**/{node_modules,.git}/**'

export function isRecord(path: string): boolean {
  return record.test(path)
}
