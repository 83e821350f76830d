/** More bytes than any datasheet has. */
export const mostBytes = 50e6

export const tooLarge = 'it has more than 50 MB'

/** Longer than any datasheet takes; a reader that starts first loads the library. */
export const readingSeconds = 5
export const startingSeconds = 3

export const tookTooLong = `reading it took more than ${readingSeconds} s`
