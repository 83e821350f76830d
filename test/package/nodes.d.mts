export const nodes: readonly { readonly version: string; readonly folder: string; readonly program: string }[]
