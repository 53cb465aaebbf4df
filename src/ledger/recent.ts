/** A map that keeps the most recently used and forgets the rest: what it forgets can be rebuilt from the ledger. */
export class Recent<Value> {
  private readonly kept = new Map<string, Value>();
  private readonly most: number;

  constructor(most: number) {
    this.most = most;
  }

  get(key: string): Value | undefined {
    return this.kept.get(key);
  }

  /** Puts it last in line to be forgotten. */
  set(key: string, value: Value): void {
    this.kept.delete(key);
    this.kept.set(key, value);
    if (this.kept.size <= this.most) return;
    const [oldest] = this.kept.keys();
    if (oldest !== undefined) this.kept.delete(oldest);
  }

  clear(): void {
    this.kept.clear();
  }
}
