export function refuse(sentence: string): never;
export function nodeSuffices(version: string): boolean;
export function browserTrouble(
  env?: Readonly<Record<string, string | undefined>>,
  platform?: string,
  arch?: string,
): string | undefined;
export function postgresTrouble(): string | undefined;
