export declare function bundleCases(): string
export declare function companion(): string
export declare function otherYamlExtension(): Promise<string>
