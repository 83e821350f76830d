/** More bytes than any datasheet has. */
export const mostBytes = 50e6

export const tooLarge = 'it has more than 50 MB'
