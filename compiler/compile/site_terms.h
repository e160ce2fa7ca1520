// The words of the index, handed to the site, so that the search in the page finds and ranks as the index does.
#pragma once

#include "emit/site/site.h"

namespace benchlore {

// The shop and its judgements must outlive the function that is returned.
TermsOf terms_for_site(const Shop& shop, const JudgedShop& judged);
RankingNumbers ranking_for_site();

} // namespace benchlore
