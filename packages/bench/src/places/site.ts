/** Where the book's benches stand. */
export interface Site {
  readonly name: string;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly elevation_m: number;
  /** IANA zone by whose midnights days are cut. */
  readonly zone: string;
  /** ISO 4217 code. */
  readonly currency: string;
  /** Whether somebody wrote it, or we took it from the device's zone. */
  readonly assumed: boolean;
}
