/** The clock of the program: set to each moment of a build that is told, then the real one. */
export class BuildClock {
  #moment: number | null = null;

  readonly now = (): Date => new Date(this.#moment ?? Date.now());

  readonly set = (instant: string): void => {
    this.#moment = Date.parse(instant);
  };

  run(): void {
    this.#moment = null;
  }
}
