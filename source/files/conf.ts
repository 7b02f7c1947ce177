/** conf by itself, since it is loaded only when a setting is written. */
export { default as Conf } from 'conf';
