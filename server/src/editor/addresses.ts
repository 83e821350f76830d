import { schemes } from './protocol.ts'

/**
 * Addresses and the paths that the library knows files by. A path is the address with its escapes read, so that an id with
 * a blank or an accent is what the person sees, and so that two clients' spellings of one address are one file.
 */
export interface Addresses {
  /** null for a scheme that is answered with nothing */
  pathOf(uri: string): string | null
  /** The address as it was last heard. */
  uriOf(path: string): string
}

export function createAddresses(): Addresses {
  const heard = new Map<string, string>()
  return {
    pathOf(uri) {
      if (!schemes.some((scheme) => uri.startsWith(`${scheme}:`))) return null
      const path = decoded(uri).replace(/^file:\/\/\/[A-Z]:/, (drive) => drive.toLowerCase())
      heard.set(path, uri)
      return path
    },
    uriOf: (path) => heard.get(path) ?? encodeURI(path),
  }
}

/** The address of the same folder's file `name`. */
export const besides = (uri: string, name: string) => uri.slice(0, uri.lastIndexOf('/') + 1) + encodeURIComponent(name)

export const fileName = (path: string) => path.slice(path.lastIndexOf('/') + 1)

/** An escaped slash parts no folders. */
const decodedStep = (step: string) => (/%2f/i.test(step) ? step : decodeURIComponent(step))

function decoded(uri: string): string {
  try {
    return uri.split('/').map(decodedStep).join('/')
  } catch {
    return uri
  }
}
