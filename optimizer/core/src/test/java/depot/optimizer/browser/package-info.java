/** Opens pages in a real browser, without a window, and looks at them as readers do: on a phone, by keyboard, with other eyes, without scripts. */
package depot.optimizer.browser;
