/** What the plugin makes of the whole core. */
declare module "plain-core" {
  /** The whole core after gzip, as base64. */
  const packed: string;
  export default packed;
}
