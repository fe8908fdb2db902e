export const root: string;
export function runProgram(
  command: string,
  args: readonly string[],
  options?: { readonly env?: Readonly<Record<string, string>>; readonly cwd?: string },
): Promise<number>;
export function runNode(
  args: readonly string[],
  options?: { readonly env?: Readonly<Record<string, string>>; readonly cwd?: string },
): Promise<number>;
export function askProgram(command: string, args: readonly string[]): string | undefined;
