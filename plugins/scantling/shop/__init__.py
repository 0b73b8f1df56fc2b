"""What can be bought, at what actual size and what price, and the saw's kerf."""

from scantling.shop.forms import HARDWOOD, LUMBER, PRICE_LIST, RULES, SHEET, SHOP, SIZED, WARE
from scantling.shop.lists import priced_names
from scantling.shop.mine import MY_SHOP, MyShop, read_my_shop, shop_of
from scantling.shop.model import PriceList, Rules, Sale, Shop, Stock, Ware
from scantling.shop.nominal import actual_size, nominal_size
from scantling.shop.owned import Owned, read_owned
from scantling.shop.read import USUAL_RULES, read_shop
from scantling.shop.woods import WOODS, Wood, wood_named

__all__ = [
    "HARDWOOD",
    "LUMBER",
    "MY_SHOP",
    "PRICE_LIST",
    "RULES",
    "SHEET",
    "SHOP",
    "SIZED",
    "USUAL_RULES",
    "WARE",
    "WOODS",
    "MyShop",
    "Owned",
    "PriceList",
    "Rules",
    "Sale",
    "Shop",
    "Stock",
    "Ware",
    "Wood",
    "actual_size",
    "nominal_size",
    "priced_names",
    "read_my_shop",
    "read_owned",
    "read_shop",
    "shop_of",
    "wood_named",
]
