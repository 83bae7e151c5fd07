/** What plans cost: present costs, payments line by line, yearly cash flows, taxes and returns. Imports scenario and plan. */
package depot.optimizer.finance;
