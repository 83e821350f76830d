export declare const place: string
export declare const installed: () => boolean
