export declare const place: string
export declare const webPlace: string
export declare const installed: () => boolean
export declare const webInstalled: () => boolean
