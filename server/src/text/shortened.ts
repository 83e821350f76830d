/** Words as a message quotes them. */
export const shortened = (words: string): string => (words.length <= 40 ? words : `${words.slice(0, 37)}...`)
