// A part with what its family adds to its own ratings.
#pragma once

#include "schema/part.h"

namespace benchlore {

// Keeps the completed ratings alive for as long as the part is judged. A part without a known family stays as it is.
class WholePart {
public:
  WholePart(const Schema& schema, const Part& part);
  WholePart(const WholePart&) = delete;
  WholePart& operator=(const WholePart&) = delete;
  const Part& part() const { return part_; }

private:
  Ratings ratings_;
  Part part_;
};

} // namespace benchlore
