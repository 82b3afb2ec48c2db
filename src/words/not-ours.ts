/** English words of rows and of their sentences, which a line in another language may not have. */
export const notOurs =
  /(?<![\p{L}\d])(?:sts?|rows?|knit|purl|[kp]\d*|RS|WS|ssk|[kp]2tog|bind|cast|rep|foll|the|and|of)(?![\p{L}\d])/u;
