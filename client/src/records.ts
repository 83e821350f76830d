const record = /(\.(panel|controller|battery|climate|system)\.(ya?ml|json)|(^|\/)wattproof\.ya?ml)$/i

/** Folders that hold other people's files. */
export const skippedGlob = '**/{node_modules,.git}/**'

/** Records that the view beside the editor draws. */
export const hasPictures = (path: string): boolean => /\.(panel|system)\.(ya?ml|json)$/i.test(path)

/** Records that may have a datasheet which is read. */
export const isPanel = (path: string): boolean => /\.panel\.(ya?ml|json)$/i.test(path)

export const isSystem = (path: string): boolean => /\.system\.(ya?ml|json)$/i.test(path)

export function isRecord(path: string): boolean {
  return record.test(path)
}
