/** Everything a command touches outside its arguments, so that tests run it in process with their own clock and disk. */
export interface Surroundings {
  out(text: string): void;
  err(text: string): void;
  /** Epoch milliseconds. */
  now_ms(): number;
  /** 0 (included) to 1 (excluded). */
  random(): number;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Folder in which file names are read. */
  readonly cwd: string;
  /** Folder of this device: its id, the usual book, the kept demo book. */
  readonly home: string;
  /** IANA zone of this device. */
  readonly zone: string;
  /** Width of the screen, in letters. */
  readonly columns_n: number;
  /** The whole of standard input. */
  input(): Promise<string>;
  /** Resolves when somebody asks the program to stop. */
  stopped(): Promise<void>;
}
